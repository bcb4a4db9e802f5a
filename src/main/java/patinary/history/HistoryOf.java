package patinary.history;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import patinary.web.House;
import patinary.web.Shell;

/** What the layout asks while it is drawn: the history of the one thing that a page shows, at the foot of that page. */
@Component("history")
class HistoryOf {

    private static final int MOST = 20;

    private final Changes changes;
    private final Telling telling;
    private final Undo undo;
    private final Shell shell;
    private final House house;

    HistoryOf(Changes changes, Telling telling, Undo undo, Shell shell, House house) {
        this.changes = changes;
        this.telling = telling;
        this.undo = undo;
        this.shell = shell;
        this.house = house;
    }

    /** The latest changes of what the page shows; none where it shows no single thing, or an error, or nobody may see it. */
    public List<Told.Done> here() {
        HttpServletRequest request =
                ((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest();
        boolean may = shell.isSignedIn()
                && !house.isClosed("GET", "/history")
                && request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) == null;
        Optional<Subject> subject = may ? Pages.at(request.getRequestURI()) : Optional.empty();
        return subject.map(one -> telling.told(changes.of(one, MOST))).orElse(List.of());
    }

    /** Whether an act may be tried to be taken back. */
    public boolean mayUndo(UUID act) {
        return undo.mayBe(act);
    }
}
