package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.supplies.SupplyCatalog.Known;

/** An invented paint in jars of 200 ml, bought last for 12.00 a jar; figures by hand. */
class BuyRowTest {

    private static final UUID SOURCE = new UUID(3, 3);

    private static BuyRow row(@Nullable String low, String left, @Nullable UseRate rate, String need) {
        Known paint = SpansTest.paint(low, "2", List.of());
        BuyRow.Bought bought =
                new BuyRow.Bought(paint.id(), SOURCE, "Hill Street Paints", 1200, BigDecimal.valueOf(200));
        return BuyRow.of(
                paint, new BigDecimal(left), rate, new BuyRow.Need(paint.id(), new BigDecimal(need), 2), bought);
    }

    private static UseRate perWeek(double quantity) {
        return new UseRate(quantity, quantity / 2, quantity * 2, 12);
    }

    @Test
    void whatLastsIsNotBought() {
        assertThat(row(null, "300", perWeek(50), "0").isWanted()).isFalse();
        assertThat(row("100", "101", null, "0").isWanted()).isFalse();
        assertThat(row(null, "5", null, "0").isWanted()).as("nothing to go by").isFalse();
    }

    /** 140 ml last 2.8 weeks at 50 a week. For eight weeks 400, less 140: 260, so two jars for about 24.00. */
    @Test
    void whatMayNotLastThreeWeeksIsBoughtForEight() {
        BuyRow row = row(null, "140", perWeek(50), "0");
        assertThat(row.packs()).isEqualTo(2);
        assertThat(row.priceMinor()).isEqualTo(2400);
        assertThat(row.wish()).isEqualTo("2*" + row.supply().id() + "/jar");
    }

    @Test
    void atItsMarkAtLeastOneContainerIsBought() {
        assertThat(row("100", "100", null, "0").packs()).isEqualTo(1);
        assertThat(row("500", "-20", null, "0").packs()).as("520 ml short").isEqualTo(3);
    }

    /** The waiting pieces need 450 ml and 100 are there: 350, two jars. */
    @Test
    void whatWaitingPiecesNeedIsBought() {
        assertThat(row(null, "100", null, "450").packs()).isEqualTo(2);
        assertThat(row(null, "450", null, "450").isWanted()).isFalse();
    }

    @Test
    void theListGoesBySource() {
        List<BuyingList.Errand> errands =
                BuyingList.errands(List.of(row("100", "0", null, "0"), row(null, "300", perWeek(50), "0")));
        assertThat(errands).hasSize(1);
        assertThat(errands.get(0).source()).isEqualTo("Hill Street Paints");
        assertThat(errands.get(0).rows()).hasSize(1);
        assertThat(errands.get(0).aboutMinor()).isEqualTo(1200);
    }
}
