package patinary.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;

/** Questions about many ids, asked for so many at a time as a statement takes well. */
final class Batches {

    private static final int SIZE = 500;

    private Batches() {}

    static <T> List<T> of(Collection<UUID> ids, Function<List<UUID>, List<T>> ask) {
        List<UUID> all = List.copyOf(ids);
        List<T> answers = new ArrayList<>();
        for (int from = 0; from < all.size(); from += SIZE) {
            answers.addAll(ask.apply(all.subList(from, Math.min(all.size(), from + SIZE))));
        }
        return answers;
    }

    static String marks(List<UUID> ids) {
        return String.join(", ", Collections.nCopies(ids.size(), "?"));
    }
}
