package patinary.backup;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import org.springframework.stereotype.Service;
import patinary.exchange.Progress;
import patinary.shop.CurrentShop;

/** The commands about backups, for the console and for {@link AskBox}. */
@Service
public class BackupErrands {

    static final String BACKUP = "backup";
    static final String REHEARSE = "rehearse";

    private final Backups backups;
    private final Rehearsals rehearsals;
    private final CurrentShop shop;
    private final Clock clock;
    private final Words words;

    BackupErrands(Backups backups, Rehearsals rehearsals, CurrentShop shop, Clock clock, Words words) {
        this.backups = backups;
        this.rehearsals = rehearsals;
        this.shop = shop;
        this.clock = clock;
        this.words = words;
    }

    /**
     * Does what a command says.
     *
     * @param what the command
     * @param file the file that it names, or empty
     */
    public AskBox.Answer answer(String what, String file) {
        if (!shop.isOpen()) {
            return new AskBox.Answer(false, words.of("errand.no-shop"));
        }
        return switch (what) {
            case BACKUP -> backup(file);
            case REHEARSE -> rehearse(file);
            default -> new AskBox.Answer(false, words.of("errand.unknown", what));
        };
    }

    private AskBox.Answer rehearse(String file) {
        Optional<Path> backup = file.isEmpty() ? rehearsals.latest() : Optional.of(Path.of(file));
        if (backup.filter(Files::isRegularFile).isEmpty()) {
            return new AskBox.Answer(false, words.of("errand.no-backup"));
        }
        return rehearsals
                .run(backup.get())
                .map(done -> new AskBox.Answer(done.good(), words.of("errand.written", done.file(), done.told())))
                .orElseGet(() -> new AskBox.Answer(false, words.of("errand.busy")));
    }

    private AskBox.Answer backup(String file) {
        Optional<BackupRun> run =
                file.isEmpty() ? backups.make(Progress.SILENT) : backups.makeAt(target(file), Progress.SILENT);
        return run.map(done -> new AskBox.Answer(
                        done.good(), done.good() ? words.of("errand.written", done.file(), done.told()) : done.told()))
                .orElseGet(() -> new AskBox.Answer(false, words.of("errand.busy")));
    }

    /** A folder takes one under the usual name. */
    private Path target(String file) {
        Path path = Path.of(file).toAbsolutePath().normalize();
        return Files.isDirectory(path)
                ? path.resolve(BackupFolder.name(LocalDateTime.ofInstant(clock.instant(), shop.zone())))
                : path;
    }
}
