package patinary.figures;

import java.util.List;
import java.util.stream.IntStream;

/** Parts of a long list. */
final class Batches {

    private Batches() {}

    /**
     * The list in parts of at most a size, in its order.
     *
     * @param size at least one
     */
    static <T> List<List<T>> of(List<T> list, int size) {
        int parts = (list.size() + size - 1) / size;
        return IntStream.range(0, parts)
                .mapToObj(part -> list.subList(part * size, Math.min(list.size(), (part + 1) * size)))
                .toList();
    }
}
