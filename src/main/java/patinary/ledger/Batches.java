package patinary.ledger;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Long lists, taken so many at a time as a statement, or a database's memory, takes well. */
public final class Batches {

    /** H2 finds rows by a list of ids, and then compares each of them with all of the list. */
    private static final int SIZE = 50;

    private Batches() {}

    /**
     * The list in parts of at most a size, in its order.
     *
     * @param size at least one
     */
    public static <T> List<List<T>> of(List<T> list, int size) {
        int parts = (list.size() + size - 1) / size;
        return IntStream.range(0, parts)
                .mapToObj(part -> list.subList(part * size, Math.min(list.size(), (part + 1) * size)))
                .toList();
    }

    /** Ids, so many at a time as a condition takes well. */
    public static List<List<UUID>> few(Collection<UUID> ids) {
        return of(List.copyOf(ids), SIZE);
    }

    static <T> List<T> asked(Collection<UUID> ids, Function<List<UUID>, List<T>> ask) {
        return few(ids).stream().flatMap(part -> ask.apply(part).stream()).toList();
    }

    /** Question marks for ids, with commas between. */
    public static String marks(List<UUID> ids) {
        return String.join(", ", Collections.nCopies(ids.size(), "?"));
    }
}
