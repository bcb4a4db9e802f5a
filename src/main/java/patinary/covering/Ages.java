package patinary.covering;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import patinary.money.Amount;

/** How long money waits in a balance: the sums of what no payout covers, by days. */
final class Ages {

    /** Up to how many days each row goes; the last row has no end. A month, a quarter: common practice, no source. */
    private static final List<Integer> UP_TO = List.of(7, 30, 90);

    /**
     * One row.
     *
     * @param from the fewest days
     * @param to the most, or -1
     */
    record Row(int from, int to, int count, Amount sum) {}

    private Ages() {}

    static List<Row> of(Collection<Movement> open, LocalDate today) {
        return IntStream.rangeClosed(0, UP_TO.size())
                .mapToObj(
                        i -> row(i == 0 ? 0 : UP_TO.get(i - 1) + 1, i == UP_TO.size() ? -1 : UP_TO.get(i), open, today))
                .toList();
    }

    private static Row row(int from, int to, Collection<Movement> open, LocalDate today) {
        List<Movement> within = open.stream()
                .filter(movement -> {
                    long days = Math.max(0, ChronoUnit.DAYS.between(movement.docDate(), today));
                    return days >= from && (to < 0 || days <= to);
                })
                .toList();
        return new Row(from, to, within.size(), Movement.sum(within));
    }
}
