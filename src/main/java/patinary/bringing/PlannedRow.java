package patinary.bringing;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import patinary.money.Amount;
import patinary.selling.ManySales;

/** A sale of a plan as the page lists it. */
record PlannedRow(LocalDate date, String order, String what, String buyer, Amount price) {

    static List<PlannedRow> of(Plan plan, int most) {
        return plan.with(Plan.Standing.NEW).stream()
                .limit(most)
                .map(PlannedRow::of)
                .toList();
    }

    private static PlannedRow of(Plan.Planned planned) {
        ManySales.Typed sale = Objects.requireNonNull(planned.sale());
        Amount price = planned.order().sold().stream()
                .map(sold -> sold.gross().minus(sold.discount()))
                .collect(Amount.sum())
                .minus(planned.order().amount(Meaning.ORDER_DISCOUNT));
        String what = sale.lines().stream()
                .map(line -> (line.codes() + " " + line.title()).strip())
                .collect(Collectors.joining(", "));
        return new PlannedRow(sale.date(), sale.order(), what, sale.buyer(), price);
    }
}
