package patinary.selling;

import java.util.List;
import patinary.web.Choice;

/**
 * What a form offers to choose from, and no more than can be looked through.
 *
 * @param more whether more fit the words than are shown
 */
record Choosable(List<Choice> choices, boolean more) {

    /** So many are shown; the rest are found by words. */
    static final int MOST = 100;

    /** @param found up to one more than are shown */
    static Choosable of(List<Choice> found) {
        return new Choosable(found.subList(0, Math.min(MOST, found.size())), found.size() > MOST);
    }
}
