package patinary.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import patinary.web.Answers;

/** Reads the plan from what was typed. */
final class PlanAnswers {

    private static final int LONGEST = 500;

    private final Answers answers;

    PlanAnswers(Answers answers) {
        this.answers = answers;
    }

    /** @return the plan; nothing where something is wrong, which is then told beside its field */
    Optional<BackupPlan> read(PlanForm form) {
        String folder = form.folder.strip();
        if (!folder.isEmpty()) {
            folder(folder);
        }
        int hour = between("atHour", form.atHour, 0, 23);
        int keep = between("keep", form.keep, 1, 60);
        int warn = between("warnAfterDays", form.warnAfterDays, 1, 90);
        return answers.anyWrong()
                ? Optional.empty()
                : Optional.of(new BackupPlan(form.byItself, folder, hour, keep, warn));
    }

    /** The folder must be there: one that is made by mistake would be found only when it is needed. */
    private void folder(String typed) {
        try {
            Path folder = Path.of(typed);
            if (typed.length() > LONGEST || !folder.isAbsolute()) {
                answers.wrong("folder", "backup.error.folder");
            } else if (!Files.isDirectory(folder)) {
                answers.wrong("folder", "backup.error.no-folder");
            } else {
                new BackupFolder(folder).tryOut();
            }
        } catch (InvalidPathException noPath) {
            answers.wrong("folder", "backup.error.folder");
        } catch (IOException denied) {
            answers.wrong("folder", "backup.error.folder-denied");
        }
    }

    private int between(String field, String answer, int least, int most) {
        try {
            int number = Integer.parseInt(answer.strip());
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException unreadable) {
            // Told below, as a number out of range is.
        }
        answers.wrong(field, "backup.error.between", least, most);
        return least;
    }
}
