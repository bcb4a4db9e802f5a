package patinary.bringing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;
import patinary.selling.ManySales;

/**
 * Turns the orders of a file into sales. Pure.
 *
 * @param file what the ids of the sales are drawn from, so that a plan made twice is the same plan
 * @param known the numbers of the orders that the books have of this channel, as {@link FileOrder#key}
 * @param choices what rows are, by number
 * @param passesTax whether the channel keeps the tax to pay it over itself
 * @param taxNote the words of the note that tells the place for tax
 */
record Planner(
        UUID file,
        Mapping mapping,
        ShopCurrency currency,
        Set<String> known,
        Map<Integer, RowChoice> choices,
        Goods goods,
        boolean passesTax,
        UnaryOperator<String> taxNote) {

    /** Nothing comes of a file while it is not said how it is to be read, whichever page is asked. */
    Plan plan(Sheet sheet) {
        if (!mapping.isReady()) {
            return new Plan(List.of());
        }
        Set<Integer> out = choices.entrySet().stream()
                .filter(entry -> entry.getValue().what() == RowChoice.What.OUT)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        return new Plan(FileOrders.read(sheet, mapping, currency, out).stream()
                .map(order -> planned(order, out))
                .toList());
    }

    /** What a row is: what she said, or the pieces whose codes it names. */
    Optional<RowChoice> choice(Sheet.Row row) {
        return Optional.ofNullable(choices.get(row.number())).or(() -> {
            String code = mapping.cell(row, Meaning.CODE);
            return goods.knows(code)
                    ? Optional.of(RowChoice.pieces(String.join(" ", Goods.codes(code))))
                    : Optional.empty();
        });
    }

    private Plan.Planned planned(FileOrder order, Set<Integer> out) {
        long left =
                order.rows().stream().filter(row -> out.contains(row.number())).count();
        if (left == order.rows().size()) {
            return new Plan.Planned(order, Plan.Standing.OUT, null, List.of());
        }
        if (!order.reference().isEmpty() && known.contains(FileOrder.key(order.reference()))) {
            return new Plan.Planned(order, Plan.Standing.KNOWN, null, List.of());
        }
        List<Fault> faults = new ArrayList<>(order.faults());
        List<ManySales.Line> lines = new ArrayList<>();
        for (Sold sold : order.sold()) {
            line(sold, faults).ifPresent(lines::add);
        }
        if (faults.isEmpty() && left == 0) {
            checkTotal(order, faults);
        }
        return faults.isEmpty()
                ? new Plan.Planned(order, Plan.Standing.NEW, sale(order, lines), List.of())
                : new Plan.Planned(order, Plan.Standing.WRONG, null, List.copyOf(faults));
    }

    private Optional<ManySales.Line> line(Sold sold, List<Fault> faults) {
        Optional<RowChoice> choice = choice(sold.row());
        if (choice.isEmpty()) {
            faults.add(Fault.of(sold.row(), null, "what"));
            return Optional.empty();
        }
        return switch (choice.get().what()) {
            case OUT -> Optional.empty();
            case PIECES -> pieces(sold, choice.get().codes(), faults);
            case SUPPLY -> Optional.of(supply(sold, choice.get()));
        };
    }

    private Optional<ManySales.Line> pieces(Sold sold, String codes, List<Fault> faults) {
        int count = Goods.codes(codes).size();
        boolean one = sold.quantity().compareTo(BigDecimal.ONE) == 0;
        if (!one && sold.quantity().compareTo(BigDecimal.valueOf(count)) != 0) {
            faults.add(Fault.of(
                    sold.row(),
                    Meaning.QUANTITY,
                    "piece-quantity",
                    sold.quantity().toPlainString(),
                    count));
            return Optional.empty();
        }
        return Optional.of(new ManySales.Line(
                sold.title(), codes, "", "", "", currency.plain(sold.gross()), currency.plain(sold.discount())));
    }

    /** Where the row gives the whole alone, the price of one is rounded up and the difference is a discount. */
    private ManySales.Line supply(Sold sold, RowChoice choice) {
        Amount each = sold.each() != null
                ? sold.each()
                : sold.gross().part(BigDecimal.ONE, sold.quantity(), RoundingMode.CEILING);
        Amount beyond = each.times(sold.quantity(), RoundingMode.HALF_UP)
                .minus(sold.gross())
                .max(Amount.ZERO);
        return new ManySales.Line(
                sold.title(),
                "",
                choice.supply(),
                choice.content(),
                sold.quantity().toPlainString(),
                currency.plain(each),
                currency.plain(sold.discount().plus(beyond)));
    }

    /** The file's total must be what its parts add up to; a channel that keeps the tax may leave it out of the total. */
    private void checkTotal(FileOrder order, List<Fault> faults) {
        Amount nets = order.sold().stream()
                .map(sold -> sold.gross().minus(sold.discount()))
                .collect(Amount.sum());
        @Nullable Amount total = order.ofOrder().get(Meaning.TOTAL);
        Amount before = nets.minus(order.amount(Meaning.ORDER_DISCOUNT)).plus(order.amount(Meaning.SHIPPING));
        Amount withTax = before.plus(order.amount(Meaning.TAX));
        if (total != null && !total.equals(withTax) && !(passesTax && total.equals(before))) {
            faults.add(Fault.of(
                    order.rows().get(0), Meaning.TOTAL, "total", currency.plain(total), currency.plain(withTax)));
        }
    }

    private ManySales.Typed sale(FileOrder order, List<ManySales.Line> lines) {
        String place = order.text(Sold::taxPlace);
        return new ManySales.Typed(
                UUID.nameUUIDFromBytes((file + FileOrder.key(order.reference())).getBytes(StandardCharsets.UTF_8)),
                Objects.requireNonNull(order.date()),
                Objects.requireNonNull(mapping.channel()),
                order.text(Sold::buyer),
                order.reference(),
                place.isEmpty() ? "" : taxNote.apply(place),
                currency.plain(order.amount(Meaning.ORDER_DISCOUNT)),
                currency.plain(order.amount(Meaning.SHIPPING)),
                currency.plain(order.amount(Meaning.TAX)),
                mapping.has(Meaning.FEE) ? currency.plain(order.amount(Meaning.FEE)) : "",
                mapping.sent(),
                lines);
    }
}
