package patinary.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import patinary.measure.Sides;

/** Worked by hand on squared paper; the rule is in docs/handbook/sheets.md. */
class SheetLayoutTest {

    private static final Sides SHEET = sides("30", "60");

    @Test
    void nothingCutIsAllWhole() {
        SheetLayout layout = SheetLayout.of(SHEET, List.of(), new BigDecimal("5400"));
        assertThat(layout.whole()).isEqualTo(3);
        assertThat(layout.opened()).isEmpty();
    }

    /** 10 x 20 off the corner: beside it 20 x 20 and below it 30 x 40, or the other way 20 x 60 and 10 x 40: the latter is less. */
    @Test
    void theLargerRestStaysAsLargeAsItCan() {
        OpenSheet sheet = new OpenSheet(SHEET);
        assertThat(sheet.take(sides("10", "20"))).isTrue();
        assertThat(sheet.cuts()).containsExactly(box("0", "0", "10", "20"));
        assertThat(sheet.free()).containsExactlyInAnyOrder(box("10", "0", "20", "60"), box("0", "20", "10", "40"));
        assertThat(sheet.freeArea()).isEqualByComparingTo("1600");
    }

    @Test
    void aCutIsTurnedWhereItFitsOnlyThen() {
        OpenSheet sheet = new OpenSheet(SHEET);
        assertThat(sheet.take(sides("50", "20"))).isTrue();
        assertThat(sheet.cuts()).containsExactly(box("0", "0", "20", "50"));
        assertThat(sheet.take(sides("31", "31"))).isFalse();
    }

    @Test
    void thePieceThatWasLeftOverIsUsedBeforeANewSheet() {
        List<CutOut> cuts =
                List.of(CutOut.of(sides("30", "50")), CutOut.of(sides("10", "30")), CutOut.of(sides("5", "5")));
        SheetLayout layout = SheetLayout.of(SHEET, cuts, new BigDecimal("1775"));
        assertThat(layout.opened()).hasSize(1);
        assertThat(layout.opened().get(0).freeArea()).isEqualByComparingTo("1775");
        assertThat(layout.whole()).isZero();
    }

    /** A third without a shape is a strip of 30 x 20; two thirds more use the sheet up. */
    @Test
    void partsAreStrips() {
        List<CutOut> third = List.of(CutOut.shapeless(new BigDecimal("600")));
        SheetLayout layout = SheetLayout.of(SHEET, third, new BigDecimal("1200"));
        assertThat(layout.opened().get(0).free()).containsExactly(box("0", "20", "30", "40"));
        List<CutOut> all = List.of(third.get(0), CutOut.shapeless(new BigDecimal("1200")));
        assertThat(SheetLayout.of(SHEET, all, BigDecimal.ZERO).opened()).isEmpty();
    }

    @Test
    void moreThanASheetOpensTheNext() {
        SheetLayout layout =
                SheetLayout.of(SHEET, List.of(CutOut.shapeless(new BigDecimal("2000"))), new BigDecimal("3400"));
        assertThat(layout.opened()).hasSize(1);
        assertThat(layout.opened().get(0).freeArea())
                .isCloseTo(new BigDecimal("1600"), org.assertj.core.data.Offset.offset(new BigDecimal("0.001")));
        assertThat(layout.whole()).isEqualTo(1);
    }

    /** Whatever is cut: nothing overlaps, nothing sticks out, and cuts and free rectangles together are the sheet. */
    @Property(tries = 500)
    void everySheetAddsUp(@ForAll("cuts") List<CutOut> cuts) {
        SheetLayout layout = SheetLayout.of(SHEET, cuts, BigDecimal.ZERO);
        for (OpenSheet sheet : layout.opened()) {
            List<Box> all = new ArrayList<>(sheet.cuts());
            all.addAll(sheet.free());
            assertThat(all.stream().map(Box::area).reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo(SHEET.area());
            for (int i = 0; i < all.size(); i++) {
                assertThat(all.get(i).x().add(all.get(i).width())).isLessThanOrEqualTo(SHEET.width());
                assertThat(all.get(i).y().add(all.get(i).height())).isLessThanOrEqualTo(SHEET.height());
                for (int j = i + 1; j < all.size(); j++) {
                    assertThat(overlap(all.get(i), all.get(j))).isFalse();
                }
            }
        }
    }

    @Provide
    Arbitrary<List<CutOut>> cuts() {
        Arbitrary<Integer> side = Arbitraries.integers().between(1, 40);
        return Combinators.combine(side, side, Arbitraries.of(true, true, true, false))
                .as((wide, high, known) -> known
                        ? CutOut.of(sides(wide.toString(), high.toString()))
                        : CutOut.shapeless(BigDecimal.valueOf((long) wide * high)))
                .list()
                .ofMinSize(1)
                .ofMaxSize(15);
    }

    private static boolean overlap(Box one, Box other) {
        return one.x().compareTo(other.x().add(other.width())) < 0
                && other.x().compareTo(one.x().add(one.width())) < 0
                && one.y().compareTo(other.y().add(other.height())) < 0
                && other.y().compareTo(one.y().add(one.height())) < 0;
    }

    private static Box box(String x, String y, String width, String height) {
        return new Box(new BigDecimal(x), new BigDecimal(y), new BigDecimal(width), new BigDecimal(height));
    }

    private static Sides sides(String width, String height) {
        return new Sides(new BigDecimal(width), new BigDecimal(height));
    }
}
