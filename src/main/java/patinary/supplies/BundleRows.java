package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;

/** What the pages show of bundles. */
@Component
class BundleRows {

    /**
     * A bundle beside the shelf.
     *
     * @param parts what is in it, in words
     * @param singly what its parts are asked singly, or null where one has no price
     * @param cost what its parts cost, or null where the cost of one is not known
     * @param makes how many of it the stock makes
     */
    record Row(
            UUID id,
            String name,
            String parts,
            Amount price,
            @Nullable Amount singly,
            @Nullable Amount cost,
            long makes) {

        /** What is left of the price over the cost, whole percent of the price. */
        public @Nullable Long marginPercent() {
            if (cost == null || price.isZero()) {
                return null;
            }
            return BigDecimal.valueOf(price.minus(cost).minor() * 100)
                    .divide(BigDecimal.valueOf(price.minor()), 0, RoundingMode.HALF_UP)
                    .longValue();
        }
    }

    /** A part with its share of the price. */
    record Share(
            String name,
            String typed,
            @Nullable Amount asked,
            @Nullable Amount cost,
            Amount share) {}

    private final BundleBook book;
    private final SupplyCatalog catalog;

    BundleRows(BundleBook book, SupplyCatalog catalog) {
        this.book = book;
        this.catalog = catalog;
    }

    /** All bundles that are sold, beside the rows of the shelf at the end of a day. */
    List<Row> at(List<RetailList.Row> rows) {
        Map<UUID, RetailList.Row> shelf =
                rows.stream().collect(Collectors.toMap(RetailList.Row::id, Function.identity()));
        Map<UUID, BigDecimal> stock =
                shelf.values().stream().collect(Collectors.toMap(RetailList.Row::id, RetailList.Row::quantity));
        Map<UUID, String> names = catalog.names();
        return book.all().stream().map(kept -> row(kept, shelf, stock, names)).toList();
    }

    /** How the price is shared today. */
    List<Share> shares(Bundle.Facts bundle) {
        Map<UUID, String> names = catalog.names();
        List<BundleShares.Known> known = book.known(bundle.parts());
        List<Amount> shares = BundleShares.of(bundle.price(), known);
        List<Share> rows = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            Bundle.Part part = bundle.parts().get(i);
            rows.add(new Share(
                    title(names, part),
                    part.typed(),
                    rounded(known.get(i).asked()),
                    rounded(known.get(i).cost()),
                    shares.get(i)));
        }
        return rows;
    }

    private static Row row(
            BundleBook.Kept kept,
            Map<UUID, RetailList.Row> shelf,
            Map<UUID, BigDecimal> stock,
            Map<UUID, String> names) {
        Bundle.Facts facts = kept.facts();
        List<BundleShares.Known> known = BundleBook.known(facts.parts(), shelf);
        String parts = facts.parts().stream()
                .map(part -> part.typed() + " " + title(names, part))
                .collect(Collectors.joining(", "));
        return new Row(
                kept.id(),
                facts.name(),
                parts,
                facts.price(),
                sum(known, BundleShares.Known::asked),
                sum(known, BundleShares.Known::cost),
                facts.makes(stock));
    }

    private static @Nullable Amount sum(
            List<BundleShares.Known> known, Function<BundleShares.Known, @Nullable BigDecimal> figure) {
        List<BigDecimal> figures =
                known.stream().map(figure).filter(Objects::nonNull).toList();
        return figures.size() < known.size()
                ? null
                : rounded(figures.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static @Nullable Amount rounded(@Nullable BigDecimal minor) {
        return minor == null
                ? null
                : Amount.of(minor.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    private static String title(Map<UUID, String> names, Bundle.Part part) {
        return Objects.requireNonNull(names.get(part.supplyId()));
    }
}
