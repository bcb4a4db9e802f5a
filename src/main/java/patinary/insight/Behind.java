package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.insight.OfferFacts.Sold;
import patinary.money.Amount;

/**
 * The pieces that the figures of a row are made of: each figure counts or adds up one of these lists.
 *
 * @param found with the day each came
 * @param offered pieces on offer at any time, those sold among them
 * @param waiting pieces on offer on the last day
 * @param sales every sale of the period, with those that came back
 */
record Behind(List<Came> found, Set<UUID> offered, Set<UUID> waiting, List<Sale> sales) {

    /** A figure, or several figures, that one list opens. */
    enum What {
        FOUND,
        OFFERED,
        SOLD,
        WAITING,
        DAYS,
        SALES;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<What> of(String word) {
            return Stream.of(values()).filter(what -> what.word().equals(word)).findFirst();
        }
    }

    record Came(UUID piece, LocalDate day) {}

    /** @param days to sell, where they are known */
    record Sale(Sold sold, Optional<Integer> days) {}

    /**
     * One piece of a list.
     *
     * @param found the day it came; null where the list is not of those that came
     * @param sold the day it sold; null where the list is not of sales
     */
    record Line(
            UUID piece,
            @Nullable LocalDate found,
            @Nullable LocalDate sold,
            boolean cameBack,
            @Nullable Integer days,
            @Nullable Amount cost,
            @Nullable Amount net,
            @Nullable Amount profit) {

        private static Line of(UUID piece, @Nullable LocalDate found) {
            return new Line(piece, found, null, false, null, null, null, null);
        }

        private static Line of(Sale sale) {
            Sold sold = sale.sold();
            return new Line(
                    sold.piece(),
                    null,
                    sold.day(),
                    sold.cameBack(),
                    sale.days().orElse(null),
                    Amount.of(sold.cost()),
                    Amount.of(sold.net()),
                    Amount.of(sold.profit()));
        }
    }

    /** Of nothing yet, to be added to. */
    static Behind empty() {
        return new Behind(new ArrayList<>(), new HashSet<>(), new HashSet<>(), new ArrayList<>());
    }

    /** Different pieces sold that did not come back. */
    long sold() {
        return stayed().map(sale -> sale.sold().piece()).distinct().count();
    }

    /** Days to sell of those of which they are known. */
    List<Integer> days() {
        return stayed().flatMap(sale -> sale.days().stream()).toList();
    }

    /** As many lines as the figure counts; of money the lines add up to it. */
    List<Line> lines(What what) {
        return switch (what) {
            case FOUND ->
                found.stream()
                        .sorted(Comparator.comparing(Came::day).thenComparing(Came::piece))
                        .map(came -> Line.of(came.piece(), came.day()))
                        .toList();
            case OFFERED -> lines(offered);
            case WAITING -> lines(waiting);
            case SOLD -> {
                Set<UUID> seen = new HashSet<>();
                yield stayed().filter(sale -> seen.add(sale.sold().piece()))
                        .map(Line::of)
                        .toList();
            }
            case DAYS ->
                stayed().filter(sale -> sale.days().isPresent()).map(Line::of).toList();
            case SALES -> sales.stream().map(Line::of).toList();
        };
    }

    private static List<Line> lines(Collection<UUID> pieces) {
        return pieces.stream().sorted().map(piece -> Line.of(piece, null)).toList();
    }

    private Stream<Sale> stayed() {
        return sales.stream().filter(sale -> !sale.sold().cameBack());
    }
}
