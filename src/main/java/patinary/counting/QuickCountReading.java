package patinary.counting;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.ledger.StockPlace;
import patinary.measure.Dimension;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;
import patinary.supplies.SupplyCount;
import patinary.web.Answers;

/** Turns taps into a count: quarters of the open container and full ones beside it, or the scales, or a typed quantity. */
final class QuickCountReading {

    /** What to do with what is missing. */
    enum Settle {
        SHARE,
        WASTE
    }

    /** A quantity, and the step in which it was read off; null where it was measured. */
    private record Left(BigDecimal quantity, @Nullable BigDecimal step) {}

    private static final int NOTE = 2000;
    private static final int MOST = 9999;
    private static final BigDecimal QUARTER = new BigDecimal("0.25");

    private final QuickCountForm form;
    private final Answers answers;
    private final Known supply;

    QuickCountReading(QuickCountForm form, Answers answers, Known supply) {
        this.form = form;
        this.answers = answers;
        this.supply = supply;
    }

    /** The count; to be stored only where {@link Answers#anyWrong()} says no. */
    Optional<SupplyCount> read(UUID id, LocalDate today) {
        LocalDate date = form.date.isBlank() ? today : answers.date("date", form.date);
        String note = answers.note("note", form.note, NOTE);
        Optional<Settle> settle = answers.word("settle", form.settle, Settle.class, "counting.error.settle");
        return left().flatMap(left ->
                settle.map(how -> new SupplyCount(id, date, note, supply.id(), StockPlace.BENCH, left.quantity())
                        .asWaste(how == Settle.WASTE)
                        .inStepsOf(left.step())));
    }

    private Optional<Left> left() {
        boolean tapped = !form.quarters.isBlank();
        long ways = Stream.of(
                        tapped ? form.quarters : form.gross.isBlank() ? form.whole : "", form.gross, form.quantity)
                .filter(answer -> !answer.isBlank())
                .count();
        if (ways != 1) {
            answers.wrong(
                    ways == 0 ? "quarters" : "quantity", ways == 0 ? "counting.error.none" : "counting.error.two");
            return Optional.empty();
        }
        if (!form.quantity.isBlank()) {
            return typed().map(quantity -> new Left(quantity, null));
        }
        return form.gross.isBlank() ? stepped() : weighed().map(quantity -> new Left(quantity, null));
    }

    private Optional<BigDecimal> typed() {
        // Nothing left is nothing left in any unit.
        return form.quantity.equals("0")
                ? Optional.of(BigDecimal.ZERO)
                : answers.quantity(
                        "quantity", form.quantity, supply.facts().dimension(), supply.measuresOn(LocalDate.MAX));
    }

    private Optional<Left> stepped() {
        Optional<Supply.Named> pack = pack();
        if (pack.isEmpty()) {
            if (form.quarters.equals("0") && whole().orElse(0) == 0) {
                return Optional.of(new Left(BigDecimal.ZERO, null));
            }
            answers.wrong("quarters", "counting.error.pack");
            return Optional.empty();
        }
        int quarters = quarters();
        BigDecimal content = pack.get().quantity();
        BigDecimal step = content.multiply(QUARTER);
        return whole().map(full -> new Left(
                content.multiply(BigDecimal.valueOf(full)).add(step.multiply(BigDecimal.valueOf(quarters))),
                quarters == 0 ? null : step));
    }

    private Optional<BigDecimal> weighed() {
        Optional<BigDecimal> grams = answers.quantity("gross", form.gross, Dimension.MASS, List.of());
        if (!supply.facts().weighing().isEnough(supply.facts().dimension())) {
            answers.wrong("gross", "counting.error.weighing");
            return Optional.empty();
        }
        Optional<BigDecimal> content = grams.flatMap(
                gross -> supply.facts().weighing().content(gross, supply.facts().dimension()));
        if (grams.isPresent() && content.isEmpty()) {
            answers.wrong("gross", "counting.error.lighter");
        }
        BigDecimal besides = pack().map(Supply.Named::quantity).orElse(BigDecimal.ZERO);
        return content.flatMap(open -> whole().map(full -> open.add(besides.multiply(BigDecimal.valueOf(full)))));
    }

    private int quarters() {
        if (form.quarters.isBlank()) {
            return 0;
        }
        if (!form.quarters.matches("[0-4]")) {
            answers.wrong("quarters", "counting.error.none");
            return 0;
        }
        return Integer.parseInt(form.quarters);
    }

    private Optional<Integer> whole() {
        if (form.whole.isBlank()) {
            return Optional.of(0);
        }
        Optional<Integer> whole = answers.whole("whole", form.whole);
        if (whole.filter(number -> number < 0 || number > MOST).isPresent()) {
            answers.wrong("whole", "counting.error.whole");
            return Optional.empty();
        }
        return whole;
    }

    private Optional<Supply.Named> pack() {
        List<Supply.Named> packs = supply.facts().packs();
        return form.pack.isBlank()
                ? packs.stream().findFirst()
                : packs.stream().filter(named -> named.name().equals(form.pack)).findFirst();
    }
}
