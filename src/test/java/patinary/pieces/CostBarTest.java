package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

class CostBarTest {

    @Test
    void fillsTheWholeWidthWithoutAGap() {
        List<CostBar.Part> parts = CostBar.of(List.of(
                new CostBar.Slice("purchase", Amount.of(1)),
                new CostBar.Slice("supplies", Amount.of(1)),
                new CostBar.Slice("work", Amount.of(1))));

        assertThat(parts).extracting(CostBar.Part::from).containsExactly(0, 334, 667);
        assertThat(parts).extracting(CostBar.Part::width).containsExactly(334, 333, 333);
    }

    @Test
    void leavesOutWhatIsNothingOrLess() {
        List<CostBar.Part> parts = CostBar.of(List.of(
                new CostBar.Slice("purchase", Amount.of(1080)),
                new CostBar.Slice("parts", Amount.of(-400)),
                new CostBar.Slice("supplies", Amount.ZERO)));

        assertThat(parts).extracting(CostBar.Part::name).containsExactly("purchase");
        assertThat(parts.get(0).width()).isEqualTo(1000);
    }

    @Test
    void isNoBarWhereNothingWasSpent() {
        assertThat(CostBar.of(List.of(new CostBar.Slice("purchase", Amount.ZERO))))
                .isEmpty();
    }
}
