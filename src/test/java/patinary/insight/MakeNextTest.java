package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;

/** docs/handbook/what-to-make-next.md; kinds, styles and figures are invented. */
class MakeNextTest {

    private static final PayRow.Group TRAY = group("Tray", "Cottage");
    private static final PayRow.Group LAMP = group("Lamp", "Harbor");
    private static final PayRow.Group STOOL = group("Stool", "Harbor");

    /**
     * By hand, one group, so that all is its own: 6 of 8 sold, each left 40.00; what does not sell brings 4.00; bought for 10.00,
     * supplies 2.00, 60 minutes. 0.75 × 40 + 0.25 × 4 − 12 = 19.00, though the share of a group alone is 6.5 of 9.
     */
    @Test
    void theSumByHand() {
        NextRow row = MakeNext.rows(Map.of(TRAY, pool(8, 6, 1000, 60, 4000)), aims(400), MakeNext.Order.HOUR)
                .get(0);
        double chance = 6.5 / 9;
        assertThat(row.profit()).isCloseTo(chance * 4000 + (1 - chance) * 400 - 1200, within(1e-9));
        assertThat(row.perHour()).isEqualTo(row.profitEach());
        assertThat(row.moneyEach()).isEqualTo(Amount.of(1200));
        assertThat(row.onMoney()).isEqualTo(Percent.of("150.0"));
        assertThat(row.words()).isEqualTo(NextRow.Words.WORTH);
    }

    @Test
    void theOrderIsByHourOrByMoney() {
        Map<PayRow.Group, Pool> cells = new LinkedHashMap<>();
        cells.put(TRAY, pool(12, 9, 3000, 20, 5000));
        cells.put(STOOL, pool(12, 9, 300, 240, 5000));
        assertThat(MakeNext.rows(cells, aims(0), MakeNext.Order.HOUR).get(0).group())
                .isEqualTo(TRAY);
        assertThat(MakeNext.rows(cells, aims(0), MakeNext.Order.MONEY).get(0).group())
                .isEqualTo(STOOL);
    }

    /** One lamp sold for very much: shown last, and not ranked. */
    @Test
    void oneOfOneIsNoAdvice() {
        Map<PayRow.Group, Pool> cells = new LinkedHashMap<>();
        cells.put(LAMP, pool(1, 1, 100, 10, 90_000));
        cells.put(TRAY, pool(12, 9, 1000, 60, 5000));
        cells.put(STOOL, pool(12, 5, 4000, 60, 5000));
        List<NextRow> rows = MakeNext.rows(cells, aims(0), MakeNext.Order.HOUR);
        assertThat(rows).extracting(NextRow::group).containsExactly(TRAY, STOOL, LAMP);
        assertThat(rows.get(1).words()).isEqualTo(NextRow.Words.LOSS);
        assertThat(rows.get(2).words()).isEqualTo(NextRow.Words.FEW);
        assertThat(rows.get(2).told()).isFalse();
    }

    @Test
    void withoutMinutesNothingIsSaidOfAnHour() {
        NextRow row = MakeNext.rows(Map.of(TRAY, pool(8, 6, 0, 0, 4000)), aims(0), MakeNext.Order.HOUR)
                .get(0);
        assertThat(row.perHour()).isNull();
        assertThat(row.perHourLow()).isNull();
    }

    @Test
    void thePiecesWithoutKindAndStyleAreNoSuggestion() {
        PayRow.Group none = new PayRow.Group(null, "", null, "");
        assertThat(MakeNext.rows(Map.of(none, pool(8, 6, 0, 60, 4000)), aims(0), MakeNext.Order.HOUR))
                .isEmpty();
    }

    /** 30 ml of paint and 12 of wax: enough for 3 by paint, 2 by wax; the finish done most often comes first. */
    @Test
    void theScarcestSupplySaysForHowMany() {
        UUID cream = new UUID(5, 1);
        UUID other = new UUID(5, 2);
        List<Readiness.Need> needs = List.of(
                need(cream, "Cream", TRAY, 4, "Paint", "9", "30"),
                need(cream, "Cream", TRAY, 4, "Wax", "5", "12"),
                need(other, "Blue", TRAY, 1, "Paint", "1", "30"),
                need(cream, "Cream", LAMP, 2, "Paint", "9", "30"),
                need(cream, "Cream", LAMP, 2, "Wax", "20", "12"),
                need(cream, "Cream", STOOL, 2, "Paint", null, "30"));
        Map<PayRow.Group, List<Readiness>> ready =
                Readiness.of(needs, List.of(TRAY, LAMP, STOOL, group("Tray", "Harbor")), Together.BOTH);
        assertThat(ready.get(TRAY))
                .containsExactly(
                        new Readiness(cream, "Cream", 4, 2, List.of()), new Readiness(other, "Blue", 1, 30, List.of()));
        assertThat(ready.get(LAMP)).containsExactly(new Readiness(cream, "Cream", 2, 0, List.of("Wax")));
        assertThat(ready.get(STOOL).get(0).enoughFor()).as("no surface known").isNull();
        assertThat(ready).hasSize(3);
    }

    /**
     * Trays in two styles, six of them in cream, two in blue, one each in four more; a cream one of the other style takes 16 ml of paint: by
     * the kind alone 30 ml are enough for one, whichever style it gets. By the style alone trays and lamps stand together, and no
     * lamp can be waxed.
     */
    @Test
    void aKindAloneIsReckonedWithByWhatTakesMost() {
        UUID cream = new UUID(5, 1);
        PayRow.Group harbor = group("Tray", "Harbor");
        PayRow.Group lamp = group("Lamp", "Cottage");
        List<Readiness.Need> needs = new ArrayList<>(List.of(
                need(cream, "Cream", TRAY, 4, "Paint", "9", "30"),
                need(cream, "Cream", TRAY, 4, "Wax", "5", "12"),
                need(cream, "Cream", harbor, 2, "Paint", "16", "30"),
                need(cream, "Cream", lamp, 2, "Wax", "20", "12"),
                need(new UUID(5, 2), "Blue", TRAY, 2, "Paint", "1", "30")));
        for (int i = 3; i < 7; i++) {
            needs.add(need(new UUID(5, i), "Grey " + i, TRAY, 1, "Paint", "1", "30"));
        }
        PayRow.Group tray = TRAY.kindOnly();
        assertThat(Readiness.of(needs, List.of(tray), Together.KIND).get(tray))
                .extracting(Readiness::name, Readiness::pieces, Readiness::enoughFor)
                .containsExactly(tuple("Cream", 6L, 1), tuple("Blue", 2L, 30), tuple("Grey 3", 1L, 30));
        PayRow.Group style = TRAY.styleOnly();
        assertThat(Readiness.of(needs, List.of(style), Together.STYLE)
                        .get(style)
                        .get(0))
                .isEqualTo(new Readiness(cream, "Cream", 6, 0, List.of("Wax")));
    }

    private static Readiness.Need need(
            UUID finish, String name, PayRow.Group group, long pieces, String supply, String needed, String left) {
        return new Readiness.Need(
                finish,
                name,
                group.kindId(),
                group.styleId(),
                pieces,
                UUID.nameUUIDFromBytes(supply.getBytes(StandardCharsets.UTF_8)),
                supply,
                needed == null ? null : new BigDecimal(needed),
                new BigDecimal(left));
    }

    private static Pool pool(int pieces, int sold, long bought, long minutes, long net) {
        return new Pool(
                pieces,
                new Tries(pieces, sold),
                like(sold, net),
                like(sold, net / 10),
                like(pieces, 200),
                like(pieces, minutes),
                like(pieces, bought));
    }

    private static Moments like(int count, long figure) {
        return Moments.of(
                java.util.stream.LongStream.generate(() -> figure).limit(count).toArray());
    }

    private static Aims aims(long salvage) {
        return new Aims(
                180,
                Amount.of(salvage),
                Amount.ZERO,
                null,
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
    }

    private static PayRow.Group group(String kind, String style) {
        return new PayRow.Group(
                UUID.nameUUIDFromBytes(kind.getBytes()), kind, UUID.nameUUIDFromBytes(style.getBytes()), style);
    }
}
