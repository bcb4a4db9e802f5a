package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What remains of a price under every shape of rule, each line worked by hand; common practice, no source. Everything is
 * invented. Shipping charged 6.00, sales tax 8 % on the price alone, carriage and packing 7.50.
 */
class FeeTableTest {

    /**
     * A rule in one word: p percent, f fixed, l least, m most, a/b step above and its percent, c/d the further one, w
     * on the whole base, q payment percent, x payment fixed, B base. Then price, tax, fee, payment fee, what remains.
     */
    @ParameterizedTest
    @CsvSource({
        // 10 % of 46.00 is 4.60; 46.00 − 4.60 − 7.50
        "p10, 4000, 320, 460, 0, 3390",
        // 10 % of 40.00 alone
        "p10 B1, 4000, 320, 400, 0, 3450",
        // 10 % of 49.20, which is 40.00 + 6.00 + 3.20
        "p10 B3, 4000, 320, 492, 0, 3358",
        "p0 f150, 4000, 320, 150, 0, 3700",
        // 10 % of 9.00 is 0.90, raised to the least of 2.00: 9.00 − 2.00 − 7.50
        "p10 l200, 300, 24, 200, 0, -50",
        // 10 % of 206.00 is 20.60, no more than 15.00
        "p10 m1500, 20000, 1600, 1500, 0, 18350",
        // above 30.00 only what lies above: 10 % of 30.00 + 4 % of 16.00 = 3.00 + 0.64
        "p10 a3000 b4, 4000, 320, 364, 0, 3486",
        // the step that is reached on the whole: 4 % of 46.00 = 1.84
        "p10 a3000 b4 w, 4000, 320, 184, 0, 3666",
        // exactly at the step the first percent holds: 24.00 + 6.00 = 30.00, 10 % of it
        "p10 a3000 b4 w, 2400, 192, 300, 0, 1950",
        // three steps: 10 % of 30.00 + 4 % of 10.00 + 1 % of 6.00 = 3.00 + 0.40 + 0.06
        "p10 a3000 b4 c4000 d1, 4000, 320, 346, 0, 3504",
        "p10 a3000 b4 c4000 d1 w, 4000, 320, 46, 0, 3804",
        // payment apart: 3 % of 49.20 is 1.476, rounded 1.48, + 0.25
        "p10 q3 x25, 4000, 320, 460, 173, 3217",
        // half a cent goes up: 12.5 % of 0.20 alone is 2.5 cents
        "p12.5 B1, 20, 2, 3, 0, -133",
    })
    void byHand(String rule, long price, long tax, long fee, long payment, long remains) {
        Terms terms = new Terms(read(rule), Amount.of(600), Percent.of("8"), false, Amount.of(750));
        Remains result = terms.remains(Amount.of(price));
        assertThat(List.of(
                        result.charged().tax().minor(),
                        result.fee().minor(),
                        result.payment().minor(),
                        result.net().minor()))
                .containsExactly(tax, fee, payment, remains);
    }

    private static FeeRule read(String rule) {
        String base = part(rule, 'B');
        return new FeeRule(
                LocalDate.of(2025, 1, 1),
                Percent.of(part(rule, 'p')),
                part(rule, 'f') == null ? Amount.ZERO : amount(rule, 'f'),
                base == null ? null : FeeBase.values()[Integer.parseInt(base) - 1],
                amount(rule, 'l'),
                amount(rule, 'm'),
                amount(rule, 'a'),
                percent(rule, 'b'),
                amount(rule, 'c'),
                percent(rule, 'd'),
                part(rule, 'w') == null ? null : Boolean.TRUE,
                percent(rule, 'q'),
                amount(rule, 'x'));
    }

    private static @Nullable Amount amount(String rule, char letter) {
        String part = part(rule, letter);
        return part == null ? null : Amount.of(Long.parseLong(part));
    }

    private static @Nullable Percent percent(String rule, char letter) {
        String part = part(rule, letter);
        return part == null ? null : Percent.of(part);
    }

    private static @Nullable String part(String rule, char letter) {
        return Arrays.stream(rule.split(" "))
                .filter(word -> word.charAt(0) == letter)
                .map(word -> word.substring(1))
                .findFirst()
                .orElse(null);
    }
}
