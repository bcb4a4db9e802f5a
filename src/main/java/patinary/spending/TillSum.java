package patinary.spending;

import java.util.List;
import patinary.money.Amount;

/** What counted notes and coins come to. Exact: whole numbers of whole minor units, nothing is rounded. */
final class TillSum {

    /** So many of one denomination. */
    record Heap(Amount value, int number) {}

    private TillSum() {}

    /** @throws ArithmeticException where there is more money than a book can hold */
    static Amount of(List<Heap> heaps) {
        return heaps.stream()
                .map(heap -> Amount.of(Math.multiplyExact(heap.value().minor(), (long) heap.number())))
                .collect(Amount.sum());
    }
}
