package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

class CashChangeTest {

    /** By hand: 42.50 from a fifty gives 7.50 back; from two twenties nothing can be given. */
    @Test
    void givesBackWhatIsTooMuch() {
        assertThat(change(4_250, 5_000).back()).contains(Amount.of(750));
        assertThat(change(4_250, 4_250).back()).contains(Amount.ZERO);
        assertThat(change(4_250, 4_000).back()).isEmpty();
    }

    /** What stays in the box is what was due, and change is given exactly where enough was handed over. */
    @Property
    void whatStaysIsWhatWasDue(
            @ForAll @LongRange(min = 0, max = 1_000_000_000L) long due,
            @ForAll @LongRange(min = 0, max = 1_000_000_000L) long got) {
        CashChange change = change(due, got);
        assertThat(change.back().isPresent()).isEqualTo(got >= due);
        change.back().ifPresent(back -> {
            assertThat(back.isNegative()).isFalse();
            assertThat(Amount.of(got).minus(back)).isEqualTo(Amount.of(due));
        });
    }

    private static CashChange change(long due, long got) {
        return new CashChange(Amount.of(due), Amount.of(got));
    }
}
