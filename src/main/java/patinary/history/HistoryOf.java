package patinary.history;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.web.Shell;

/** What the layout asks while it is drawn: the history of the one thing that a page shows, at the foot of that page. */
@Component("history")
class HistoryOf {

    private static final int MOST = 20;

    private final Changes changes;
    private final Telling telling;
    private final Undo undo;
    private final Shell shell;

    HistoryOf(Changes changes, Telling telling, Undo undo, Shell shell) {
        this.changes = changes;
        this.telling = telling;
        this.undo = undo;
        this.shell = shell;
    }

    /** The latest changes of what a page shows; none where it shows no single thing, or nobody may see it. */
    public List<Told.Done> at(String path) {
        Optional<Subject> subject = shell.isSignedIn() && !shell.isYearsOnly() ? Pages.at(path) : Optional.empty();
        return subject.map(one -> telling.told(changes.of(one, MOST))).orElse(List.of());
    }

    /** Whether an act may be tried to be taken back. */
    public boolean mayUndo(UUID act) {
        return undo.mayBe(act);
    }
}
