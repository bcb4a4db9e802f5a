package patinary.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** Worked by hand; common practice, no source. */
class FloatHintTest {

    /**
     * With notes of 20, 45.00 is paid with 60.00 and gives 15.00 back; 12.50 gives 7.50; 60.00 nothing; 19.00 gives 1.00.
     */
    @Test
    void addsWhatEachBuyerGetsBack() {
        assertThat(FloatHint.of(List.of(4500L, 1250L, 6000L, 1900L), 2)).contains(Amount.of(2350));
    }

    /** 19.00, 18.00 ... 13.00 back: the five largest are 19 + 18 + 17 + 16 + 15 = 85. */
    @Test
    void onlyTheFiveWithMostChangeCount() {
        assertThat(FloatHint.of(List.of(700L, 600L, 500L, 400L, 300L, 200L, 100L), 2))
                .contains(Amount.of(8500));
    }

    @Test
    void hintsAtNothingWhereNoChangeIsDueOrNotesOfTwentyMeanNothing() {
        assertThat(FloatHint.of(List.of(), 2)).isEmpty();
        assertThat(FloatHint.of(List.of(2000L, 4000L, 0L), 2)).isEmpty();
        assertThat(FloatHint.of(List.of(4500L), 0)).isEmpty();
        assertThat(FloatHint.of(List.of(4500L), 3)).isEmpty();
    }
}
