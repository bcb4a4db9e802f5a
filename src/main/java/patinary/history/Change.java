package patinary.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.exchange.Content;

/**
 * One document, or other thing, that an act changed.
 *
 * @param act what was done together has one act
 * @param place the order within the act, from 1
 * @param who the name under which somebody was signed in; empty for a command
 * @param file the file that it came out of; empty otherwise
 * @param kind the table of the shop archive that the subject is a row of
 * @param day the day of a document, as it is now or was last
 * @param stepOn the day of a later step; null where the document itself was changed
 * @param undoes the act that this one took back
 * @param before null where it was not there
 * @param after null where it is gone
 */
record Change(
        UUID id,
        UUID act,
        int place,
        Instant at,
        String who,
        CameBy cameBy,
        String file,
        String kind,
        UUID subject,
        @Nullable LocalDate day,
        @Nullable LocalDate stepOn,
        @Nullable UUID undoes,
        @Nullable Content before,
        @Nullable Content after) {

    /** What became of a subject. */
    enum What {
        RECORDED,
        CHANGED,
        REMOVED
    }

    What what() {
        if (before == null) {
            return What.RECORDED;
        }
        return after == null ? What.REMOVED : What.CHANGED;
    }

    /** The tables whose rows differ. */
    Set<String> tables() {
        Set<String> tables = new TreeSet<>();
        Stream.of(before, after)
                .filter(Objects::nonNull)
                .forEach(content -> tables.addAll(content.tables().keySet()));
        tables.removeIf(
                table -> before != null && after != null && before.rows(table).equals(after.rows(table)));
        return tables;
    }

    /** The subject as it is now or was last. */
    Content latest() {
        Content there = after == null ? before : after;
        if (there == null) {
            throw new IllegalStateException("A change without content: " + id);
        }
        return there;
    }
}
