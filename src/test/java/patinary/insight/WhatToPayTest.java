package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;

/** docs/handbook/what-to-pay.md; kinds, styles and figures are invented. */
class WhatToPayTest {

    private static final Amount RATE = Amount.of(1800);

    /**
     * The handbook's example, by hand: 75.00 % of 44.00 = 33.00; 25.00 % of 4.00 = 1.00; less supplies 3.20 and 40 minutes
     * at 18.00 = 12.00, less 5.00: 13.80; ÷ 1.08 = 12.777…, down to 12.77.
     */
    @Test
    void theSumByHand() {
        Budget sum = Budget.of(usual("75.00", 4400, 320, 40), RATE, aims(400, 500, null, "8"));
        assertThat(sum.ifSold()).isEqualTo(Amount.of(3300));
        assertThat(sum.ifNot()).isEqualTo(Amount.of(100));
        assertThat(sum.work()).isEqualTo(Amount.of(1200));
        assertThat(sum.spend()).isEqualTo(Amount.of(1380));
        assertThat(sum.most()).isEqualTo(Amount.of(1277));
    }

    /** By hand: 18.80 before; wished 50 % of x + 3.20, so x = (18.80 − 1.60) ÷ 1.5 = 11.4666…, down to 11.46. */
    @Test
    void aReturnOnTheMoneyInIt() {
        Budget sum = Budget.of(usual("75.00", 4400, 320, 40), RATE, aims(400, 0, "50", "0"));
        assertThat(sum.spend()).isEqualTo(Amount.of(1146));
        assertThat(sum.target()).isEqualTo(Amount.of(734));
        assertThat(sum.most()).isEqualTo(Amount.of(1146));
    }

    /** By hand: 10.00 % of 20.00 = 2.00 less 3.00 of supplies. */
    @Test
    void belowZeroIsNotWorthBuying() {
        Budget sum = Budget.of(usual("10.00", 2000, 300, 0), RATE, aims(0, 0, null, "8"));
        assertThat(sum.most()).isEqualTo(Amount.of(-93));
    }

    @Test
    void aShopThatHasSoldTooLittleGetsNoFigure() {
        PayRow.Group chairs = group("Chair", "Cottage");
        List<PayRow> rows =
                WhatToPay.rows(Map.of(chairs, pool(4, 4, 2000, 2100, 2200, 2300)), aims(0, 0, null, "0"), RATE);
        assertThat(rows).hasSize(4);
        assertThat(rows).allMatch(row -> row.most() == null && row.words() == PayRow.Words.NONE && row.few());
    }

    @Test
    void aKindOfWhichOneSoldIsMostlyTheWholeShop() {
        Map<PayRow.Group, Pool> cells = new LinkedHashMap<>();
        cells.put(group("Chair", "Cottage"), pool(10, 6, 4000, 4100, 4200, 3900, 3800, 4500));
        cells.put(group("Tray", "Cottage"), pool(12, 9, 2000, 2100, 2300, 1900, 1800, 2500, 2050, 2150, 2250));
        cells.put(group("Lamp", "Harbor"), pool(1, 1, 90_000));
        List<PayRow> rows = WhatToPay.rows(cells, aims(0, 0, null, "0"), Amount.ZERO);
        PayRow whole = rows.get(0);
        assertThat(whole.group().isWhole()).isTrue();
        assertThat(whole.budget().chance()).isEqualTo(Percent.of("69.57"));
        assertThat(whole.words()).isEqualTo(PayRow.Words.FIRM);
        // A tenth of what each leaves went off before it left that: drawn alike, it is a tenth of every row.
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.off().minor())
                    .isCloseTo(Math.round(row.budget().net().minor() / 10.0), within(1L));
            assertThat(row.paid()).isEqualTo(row.budget().net().plus(row.off()));
        });
        PayRow lamp = rows.stream()
                .filter(row -> row.group().kind().equals("Lamp") && row.group().styleId() == null)
                .findFirst()
                .orElseThrow();
        assertThat(lamp.few()).isTrue();
        assertThat(lamp.words()).isIn(PayRow.Words.FEW, PayRow.Words.MOSTLY_SHOP);
        assertThat(lamp.budget().net()).isLessThan(Amount.of(90_000));
        assertThat(rows)
                .allMatch(row ->
                        row.low().compareTo(row.most()) <= 0 && row.high().compareTo(row.most()) >= 0);
    }

    /** The pieces without a kind or a style count for the whole, and get no row of their own. */
    @Test
    void whatHasNoNameGetsNoRow() {
        PayRow.Group none = new PayRow.Group(null, "", null, "");
        List<PayRow> rows =
                WhatToPay.rows(Map.of(none, pool(6, 5, 100, 200, 300, 400, 500)), aims(0, 0, null, "0"), RATE);
        assertThat(rows).singleElement().matches(row -> row.group().isWhole());
    }

    private static Budget.Usual usual(String chance, long net, long supplies, long minutes) {
        return new Budget.Usual(Percent.of(chance), Amount.of(net), Amount.of(supplies), minutes);
    }

    private static Aims aims(long salvage, long target, String wished, String tax) {
        return new Aims(
                180,
                Amount.of(salvage),
                Amount.of(target),
                wished == null ? null : Percent.of(wished),
                Percent.of(tax),
                PriceEndings.parse("", 2).orElseThrow());
    }

    private static Pool pool(int tried, int inTime, long... nets) {
        return new Pool(
                tried,
                new Tries(tried, inTime),
                Moments.of(nets),
                Moments.of(LongStream.of(nets).map(net -> net / 10).toArray()),
                Moments.of(100, 200),
                Moments.of(30, 40),
                Moments.of(500, 600));
    }

    private static PayRow.Group group(String kind, String style) {
        return new PayRow.Group(
                UUID.nameUUIDFromBytes(kind.getBytes()), kind, UUID.nameUUIDFromBytes(style.getBytes()), style);
    }
}
