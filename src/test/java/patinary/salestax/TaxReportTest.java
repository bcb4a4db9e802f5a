package patinary.salestax;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;

/** The report of sales tax, by a table worked by hand in docs/handbook/sales-tax.md. All figures are invented. */
class TaxReportTest {

    private static final UUID TOWN = new UUID(1, 1);
    private static final UUID COUNTY = new UUID(1, 2);
    private static final Period SPRING = Period.of(2026, "q2").orElseThrow();

    @Test
    void addsUpByHand() {
        List<TaxRow> rows = List.of(
                // Before the quarter: not in it, but in what was due before.
                sale("2026-03-31", TOWN, 1000, 0, 70, false, true),
                // Taxed with its shipping: 50.00 + 6.00 at 7 % is 3.92.
                sale("2026-04-02", TOWN, 5000, 600, 392, false, true),
                // Nothing was charged on this one: a gift certificate of the trade, say.
                sale("2026-04-09", TOWN, 2000, 0, 0, false, true),
                // The county takes nothing of shipping: 40.00 at 5 % is 2.00.
                sale("2026-05-05", COUNTY, 4000, 500, 200, false, false),
                // The marketplace collects and pays over.
                passed("2026-05-20", 3000, 700, 259),
                // 20.00 of the first come back with 1.40 of tax.
                refund("2026-06-01", TOWN, -2000, 0, -140, true, true),
                // Something off the marketplace's, without tax.
                new TaxRow(id(), day("2026-06-02"), "REFUND", id(), null, "", -500, 0, 0, 0, true, true, false),
                paid("2026-04-20", TOWN, -70),
                paid("2026-07-02", TOWN, -252));
        TaxReport report = TaxReport.of(
                SPRING,
                rows,
                List.of(new TaxReport.Before(TOWN, 70)),
                List.of(
                        new TaxReport.Settlement(id(), TOWN, day("2026-04-01"), day("2026-06-30"), 252),
                        new TaxReport.Settlement(id(), TOWN, day("2026-01-01"), day("2026-03-31"), 70),
                        new TaxReport.Settlement(id(), COUNTY, day("2026-06-01"), day("2026-08-31"), 999)));

        TaxLine none = report.lines().get(0);
        assertThat(none.hasPlace()).isFalse();
        assertThat(cents(none.sales(), none.passed(), none.otherBack(), none.passedTax(), none.owed()))
                .containsExactly(3700L, 3700L, 500L, 259L, 0L);
        TaxLine town = report.lines().get(1);
        assertThat(cents(town.sales(), town.untaxed(), town.taxed(), town.taxedBack(), town.taxable()))
                .containsExactly(7600L, 2000L, 5600L, 2000L, 3600L);
        assertThat(cents(town.charged(), town.givenBack(), town.owed())).containsExactly(392L, 140L, 252L);
        assertThat(cents(town.before(), town.paidOver(), town.after())).containsExactly(70L, 70L, 252L);
        assertThat(cents(town.settled(), town.open())).containsExactly(252L, 0L);
        TaxLine county = report.lines().get(2);
        assertThat(cents(county.untaxed(), county.taxed(), county.owed(), county.settled()))
                .as("shipping is not taxed there; the payment is for other days")
                .containsExactly(500L, 4000L, 200L, 0L);
        assertThat(cents(report.total().after(), report.total().sales())).containsExactly(452L, 15800L);
    }

    @Test
    void saysWhatIsStillToBeDone() {
        LocalDate over = day("2026-07-01");
        assertThat(pay(100, 0, day("2026-06-30"))).isEqualTo(Standing.Pay.RUNNING);
        assertThat(pay(100, 0, over)).isEqualTo(Standing.Pay.OPEN);
        assertThat(pay(100, 40, over)).isEqualTo(Standing.Pay.IN_PART);
        assertThat(pay(100, 100, over)).isEqualTo(Standing.Pay.PAID);
        assertThat(pay(100, 120, over)).isEqualTo(Standing.Pay.TOO_MUCH);
        assertThat(pay(0, 0, over)).isEqualTo(Standing.Pay.NOTHING_DUE);
    }

    /**
     * Streamlined Sales and Use Tax Agreement, section 324: carried to the third decimal and rounded up when that is above
     * four, on the whole invoice; read as enacted in R.I. Gen. Laws 44-18.1-25.
     */
    @Test
    void roundsOnceOnTheWholeInvoice() {
        TaxRule rule = new TaxRule(day("2026-01-01"), Percent.of("7"), false);
        assertThat(rule.tax(Amount.of(297), Amount.of(500))).isEqualTo(Amount.of(21));
        assertThat(rule.tax(Amount.of(150), Amount.ZERO)).isEqualTo(Amount.of(11));
        TaxRule shipped = new TaxRule(day("2026-01-01"), Percent.of("7.25"), true);
        assertThat(shipped.tax(Amount.of(5000), Amount.of(600))).isEqualTo(Amount.of(406));
    }

    @Test
    void takesTheLatestRateThatHasBegun() {
        TaxRule first = new TaxRule(day("2026-01-01"), Percent.of("6"), true);
        TaxRule later = new TaxRule(day("2026-07-01"), Percent.of("6.25"), false);
        List<TaxRule> rules = List.of(later, first);
        assertThat(TaxRule.on(day("2025-12-31"), rules)).isEmpty();
        assertThat(TaxRule.on(day("2026-06-30"), rules)).contains(first);
        assertThat(TaxRule.on(day("2026-07-01"), rules)).contains(later);
    }

    @Test
    void knowsItsPeriods() {
        assertThat(Period.of(2024, "m2").orElseThrow().last()).isEqualTo(day("2024-02-29"));
        assertThat(Period.of(2026, "q5")).isEmpty();
        assertThat(Period.of(2026, "m13")).isEmpty();
        assertThat(Period.quarterOf(day("2026-11-28")).part()).isEqualTo("q4");
        assertThat(Period.of(2026, "q1").orElseThrow().previous().first()).isEqualTo(day("2025-10-01"));
        for (String part : List.of("year", "q1", "q2", "q3", "q4", "m1", "m12")) {
            Period period = Period.of(2026, part).orElseThrow();
            assertThat(period.part()).isEqualTo(part);
            assertThat(period.next().previous()).isEqualTo(period);
            assertThat(period.last().plusDays(1)).isEqualTo(period.next().first());
        }
    }

    /** Quarter after quarter, what is due after one is what is due before the next, and the last is the account. */
    @Property(tries = 200)
    void addsUpToTheAccount(@ForAll long seed) {
        Random random = new Random(seed);
        List<TaxRow> rows = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            rows.add(random(random));
        }
        List<TaxReport.Before> before = List.of();
        for (int quarter = 1; quarter <= 4; quarter++) {
            TaxReport report = TaxReport.of(Period.of(2026, "q" + quarter).orElseThrow(), rows, before, List.of());
            LocalDate end = report.period().last();
            long account = rows.stream()
                    .filter(row -> !row.docDate().isAfter(end))
                    .mapToLong(TaxRow::dueMinor)
                    .sum();
            assertThat(report.total().after()).isEqualTo(Amount.of(account));
            long sold = rows.stream()
                    .filter(row -> report.period().holds(row.docDate(), row.docDate()) && row.isSale())
                    .mapToLong(row -> row.priceMinor() + row.shippingMinor())
                    .sum();
            assertThat(report.total().sales()).isEqualTo(Amount.of(sold));
            before = report.lines().stream()
                    .map(line -> new TaxReport.Before(
                            line.hasPlace() ? line.place() : null, line.after().minor()))
                    .toList();
        }
    }

    private static TaxRow random(Random random) {
        String date = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(365)).toString();
        UUID place = random.nextInt(3) == 0 ? null : random.nextBoolean() ? TOWN : COUNTY;
        int price = random.nextInt(10000);
        return switch (random.nextInt(5)) {
            case 0 ->
                refund(date, place, -price, -random.nextInt(500), -random.nextInt(300), true, random.nextBoolean());
            case 1 -> paid(date, place, -random.nextInt(900));
            case 2 -> passed(date, price, random.nextInt(900), random.nextInt(300));
            case 3 ->
                new TaxRow(
                        id(), day(date), "OPENING", null, null, "", 0, 0, random.nextInt(500), 0, false, false, false);
            default -> sale(date, place, price, random.nextInt(900), random.nextInt(400), false, random.nextBoolean());
        };
    }

    private static Standing.Pay pay(long owed, long settled, LocalDate today) {
        TaxLine line = TaxLine.of(
                TOWN, List.of(sale("2026-04-02", TOWN, 1000, 0, owed, false, false)), Amount.ZERO, Amount.of(settled));
        return Standing.of(line, SPRING, today, null).pay();
    }

    private static TaxRow sale(
            String date, @Nullable UUID place, long price, long shipping, long tax, boolean passed, boolean shipTaxed) {
        return new TaxRow(
                id(), day(date), "SALE", id(), place, "", price, shipping, tax, 0, passed, tax > 0, shipTaxed);
    }

    private static TaxRow passed(String date, long price, long shipping, long tax) {
        return new TaxRow(id(), day(date), "SALE", id(), null, "", price, shipping, 0, tax, true, true, false);
    }

    private static TaxRow refund(
            String date, @Nullable UUID place, long price, long shipping, long tax, boolean taxed, boolean shipTaxed) {
        return new TaxRow(id(), day(date), "REFUND", id(), place, "", price, shipping, tax, 0, false, taxed, shipTaxed);
    }

    private static TaxRow paid(String date, @Nullable UUID place, long due) {
        return new TaxRow(id(), day(date), "SALES_TAX_PAID", null, place, "", 0, 0, due, 0, false, false, false);
    }

    private static UUID id() {
        return UUID.randomUUID();
    }

    private static LocalDate day(String date) {
        return LocalDate.parse(date);
    }

    private static List<Long> cents(Amount... amounts) {
        return List.of(amounts).stream().map(Amount::minor).toList();
    }
}
