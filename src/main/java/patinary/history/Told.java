package patinary.history;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a page shows of the history, in words. */
final class Told {

    /**
     * What was done together.
     *
     * @param at on the shop's clock
     * @param who without a letter for a command
     * @param how the last word of the message that says on which road it came
     * @param undoes the act that it took back; null where it took none back
     */
    record Done(
            UUID act,
            String at,
            String who,
            String how,
            String file,
            @Nullable UUID undoes,
            List<About> subjects) {}

    /**
     * One subject of it.
     *
     * @param what the last word of a message
     * @param page where it is seen; null where it has no page, or is gone
     */
    record About(
            String kind,
            String title,
            String what,
            @Nullable String page,
            List<Line> lines) {}

    /**
     * A row that came, went or changed.
     *
     * @param own whether it is the subject's own row, not one of its lines
     * @param called the kind of line and what tells it from others
     * @param what the last word of a message
     */
    record Line(boolean own, String called, String what, List<Field> fields) {}

    /** A field that differs. */
    record Field(String label, String before, String after) {}

    private Told() {}
}
