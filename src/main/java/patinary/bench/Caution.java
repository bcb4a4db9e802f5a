package patinary.bench;

import java.util.List;
import patinary.web.Worded;

/**
 * Something to look out for. It informs and points to local codes and licensed people; it never promises safety.
 *
 * @param id permanent short name
 * @param severity how serious it is
 * @param triggerWords words and phrases that call it up
 * @param words what to look out for, in each language
 * @param source who says so, and how well that is known
 */
public record Caution(String id, Severity severity, List<String> triggerWords, Worded words, String source) {

    /** What to look out for, in the language of the page. */
    public String text() {
        return words.here();
    }

    /** What its id begins with: the cautions of one family are about the same danger. */
    String family() {
        return id.substring(0, id.indexOf('-'));
    }

    /** The most serious first. */
    public enum Severity {
        STOP,
        WARN,
        CHECK,
        NOTE
    }
}
