package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.spending.TillSum.Heap;

class TillSumTest {

    /** By hand: 3 × 20.00 + 4 × 5.00 + 7 × 0.25 + 2 × 0.01 = 60.00 + 20.00 + 1.75 + 0.02 = 81.77. */
    @Test
    void addsUpTheHeaps() {
        assertThat(TillSum.of(List.of(heap(2_000, 3), heap(500, 4), heap(25, 7), heap(1, 2))))
                .isEqualTo(Amount.of(8_177));
    }

    @Test
    void nothingThereIsNothing() {
        assertThat(TillSum.of(List.of(heap(2_000, 0)))).isEqualTo(Amount.ZERO);
    }

    @Test
    void moreThanABookHoldsIsRefused() {
        assertThatThrownBy(() -> TillSum.of(List.of(heap(Long.MAX_VALUE, 2)))).isInstanceOf(ArithmeticException.class);
    }

    private static Heap heap(long minor, int number) {
        return new Heap(Amount.of(minor), number);
    }
}
