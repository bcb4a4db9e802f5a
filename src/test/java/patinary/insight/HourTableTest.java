package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;

/** The worked example of docs/handbook/her-hour.md; invented. */
class HourTableTest {

    private static final UUID BOX = new UUID(0, 1);
    private static final UUID TRAY = new UUID(0, 2);
    private static final YearMonth MARCH = YearMonth.of(2025, 3);
    private static final YearMonth APRIL = YearMonth.of(2025, 4);
    private static final Period PERIOD = new Period(LocalDate.of(2025, 3, 1), LocalDate.of(2025, 4, 30));
    private static final Amount RATE = Amount.of(1800);

    private final HourTable.Facts facts = new HourTable.Facts(
            Map.of(MARCH, Amount.of(3600), APRIL, Amount.of(-500)),
            Map.of(MARCH, new BigDecimal("150")),
            new MoneyFacts(
                    List.of(sale(BOX, 4000, 1000), sale(TRAY, 2000, 1000)),
                    List.of(),
                    Map.of(BOX, new BigDecimal("60"), TRAY, new BigDecimal("30"))));

    /**
     * March: 36.00 in 150 minutes is 14.40 an hour; less 45.00 for the time, −9.00. The box left 30.00 − 18.00 = 12.00, the tray 10.00 −
     * 9.00 = 1.00; both together 40.00 in 90 minutes, 26.67 an hour.
     */
    @Test
    void theWorkedExample() {
        HourTable table = HourTable.of(facts, PERIOD, aims(500, null), RATE);
        HourTable.Month march = table.months().get(0);
        assertThat(march.perHour()).isEqualTo(Amount.of(1440));
        assertThat(march.truly()).isEqualTo(Amount.of(-900));
        assertThat(march.sold()).isEqualTo(2);
        assertThat(march.reached()).as("5.00 wished").isEqualTo(1);
        assertThat(march.perSoldHour()).isEqualTo(Amount.of(2667));
    }

    @Test
    void aMonthWithoutWorkHasNoHour() {
        HourTable.Month april =
                HourTable.of(facts, PERIOD, aims(0, null), RATE).months().get(1);
        assertThat(april.perHour()).isNull();
        assertThat(april.perSoldHour()).isNull();
        assertThat(april.truly()).isEqualTo(Amount.of(-500));
    }

    /** A tenth of 10.00 is 1.00: the tray left just that. */
    @Test
    void theAimMayBeAShareOfTheMoney() {
        assertThat(HourTable.of(facts, PERIOD, aims(0, "10"), RATE).whole().reached())
                .isEqualTo(2);
        assertThat(HourTable.of(facts, PERIOD, aims(0, "10.1"), RATE).whole().reached())
                .isEqualTo(1);
    }

    @Test
    void monthsAddUp() {
        HourTable table = HourTable.of(facts, PERIOD, aims(0, null), RATE);
        assertThat(table.months().stream().map(HourTable.Month::profit).collect(Amount.sum()))
                .isEqualTo(table.whole().profit());
        assertThat(table.months().stream().map(HourTable.Month::truly).collect(Amount.sum()))
                .isEqualTo(table.whole().truly());
        assertThat(table.whole().soldProfit()).isEqualTo(Amount.of(4000));
    }

    private static PieceSale sale(UUID piece, long price, long cost) {
        SaleParts parts = new SaleParts(
                Amount.of(price), Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.of(cost));
        return new PieceSale(UUID.randomUUID(), piece, LocalDate.of(2025, 3, 9), "Stall", false, parts, Amount.ZERO);
    }

    private static Aims aims(long target, String wished) {
        return new Aims(
                180,
                Amount.ZERO,
                Amount.of(target),
                wished == null ? null : Percent.of(wished),
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
    }
}
