package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.ShopCurrency;
import patinary.selling.ManySales;

/** What becomes of rows; figures worked by hand. */
class PlannerTest {

    private static final UUID SHELF = new UUID(0, 3);

    private final Map<Meaning, Integer> columns = new EnumMap<>(Map.of(
            Meaning.ORDER,
            0,
            Meaning.DATE,
            1,
            Meaning.CODE,
            2,
            Meaning.QUANTITY,
            3,
            Meaning.PRICE,
            4,
            Meaning.TAX,
            5,
            Meaning.TOTAL,
            6));
    private final Goods goods =
            Goods.of(List.of(new Goods.Piece("P1", "Tray", true), new Goods.Piece("P2", "Jug", true)), List.of());
    private Map<Integer, RowChoice> choices = Map.of();
    private boolean eachRow;
    private boolean passesTax;

    /** 10.00 for three: 3.34 each, 10.02, so 0.02 off. */
    @Test
    void roundsThePriceOfOneUpAndTakesTheRestOff() {
        columns.put(Meaning.LINE_TOTAL, columns.remove(Meaning.PRICE));
        choices = Map.of(1, RowChoice.supply(SHELF.toString(), "1"));
        assertThat(only("1,2025-03-14,,3,10.00,,").lines()).singleElement().satisfies(line -> {
            assertThat(line.price()).isEqualTo("3.34");
            assertThat(line.discount()).isEqualTo("0.02");
            assertThat(line.quantity()).isEqualTo("3");
        });
    }

    @Test
    void sellsASetByItsCodes() {
        assertThat(only("1,2025-03-14,p1 P2,1,60.00,,").lines()).singleElement().satisfies(line -> {
            assertThat(line.codes()).isEqualTo("P1 P2");
            assertThat(line.price()).isEqualTo("60.00");
        });
        // Two of them at 30.00 are 60.00 together.
        assertThat(only("1,2025-03-14,P1 P2,2,30.00,,").lines().get(0).price()).isEqualTo("60.00");
        assertThat(faults("1,2025-03-14,P1,2,30.00,,")).containsExactly("piece-quantity");
    }

    @Test
    void addsUpOrTakesOnceWhatIsSaidOfTheOrder() {
        String rows = "1,2025-03-14,P1,1,20.00,2.00,22.00\n1,2025-03-14,P2,1,10.00,1.00,11.00";
        assertThat(faults(rows)).containsExactly("differs", "differs");
        eachRow = true;
        assertThat(only(rows).tax()).isEqualTo("3.00");
        eachRow = false;
        assertThat(only("1,2025-03-14,P1,1,20.00,3.00,33.00\n1,,P2,1,10.00,3.00,33.00")
                        .tax())
                .isEqualTo("3.00");
    }

    @Test
    void checksTheTotal() {
        assertThat(faults("1,2025-03-14,P1,1,20.00,2.00,20.00")).containsExactly("total");
        passesTax = true;
        assertThat(faults("1,2025-03-14,P1,1,20.00,2.00,20.00")).isEmpty();
        assertThat(faults("1,2025-03-14,P1,1,20.00,2.00,22.00")).isEmpty();
        assertThat(faults("1,2025-03-14,P1,1,20.00,2.00,21.00")).containsExactly("total");
    }

    @Test
    void knowsOrdersAndLeavesRowsOut() {
        choices = Map.of(2, RowChoice.OUT, 3, RowChoice.OUT);
        Plan plan = plan(
                "# k-1,2025-03-14,P1,1,20.00,,\nx,rubbish\n2,2025-03-14,P1,1,20.00,,20.00\n2,2025-03-14,P2,1,9.00,,");
        assertThat(plan.orders())
                .extracting(Plan.Planned::standing)
                .containsExactly(Plan.Standing.KNOWN, Plan.Standing.OUT, Plan.Standing.NEW);
        assertThat(plan.sales().get(0).lines())
                .extracting(ManySales.Line::codes)
                .containsExactly("P2");
    }

    @Test
    void knowsRowsWithoutANumberByWhatTheySay() {
        columns.remove(Meaning.ORDER);
        List<ManySales.Typed> sales =
                plan("a,2025-03-14,P1,1,20.00,,\na,2025-03-14,P1,1,20.00,,\nb,2025-03-14,P2,1,9.00,,")
                        .sales();
        assertThat(sales).hasSize(3).extracting(ManySales.Typed::order).doesNotHaveDuplicates();
        assertThat(sales.get(1).order()).isEqualTo(sales.get(0).order() + "-2");
    }

    @Test
    void asksForDateAndThing() {
        assertThat(faults("1,,P1,1,20.00,,")).containsExactly("no-date");
        assertThat(faults("1,2025-03-14,P9,1,20.00,,")).containsExactly("what");
        assertThat(faults("1,2025-03-14,P1,1,20.00,,\n1,2025-03-15,P2,1,20.00,,"))
                .containsExactly("two-dates");
    }

    private ManySales.Typed only(String rows) {
        return plan(rows).sales().get(0);
    }

    private List<String> faults(String rows) {
        return plan(rows).faults().stream()
                .map(fault -> fault.key().replace("bringing.fault.", ""))
                .toList();
    }

    private Plan plan(String rows) {
        Mapping mapping = new Mapping(
                Encoding.UTF_8,
                Delimiter.COMMA,
                0,
                false,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.POINT,
                eachRow,
                true,
                new UUID(0, 1),
                columns);
        return new Planner(
                        new UUID(0, 2),
                        mapping,
                        ShopCurrency.ofCode("USD"),
                        Set.of("K-1"),
                        choices,
                        goods,
                        passesTax,
                        place -> place)
                .plan(Sheet.read(rows, Delimiter.COMMA));
    }
}
