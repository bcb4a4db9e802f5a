package patinary.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything holds whatever the machine's own locale: Turkish lower-cases I differently, German swaps the marks. */
@ParameterizedClass
@ValueSource(strings = {"en-US", "de-DE", "tr-TR"})
class ShopCurrencyTest {

    private static final ShopCurrency DOLLAR = ShopCurrency.ofCode("USD");

    private final Locale before = Locale.getDefault();

    @Parameter
    String machine = "en-US";

    @BeforeEach
    void useLocale() {
        Locale.setDefault(Locale.forLanguageTag(machine));
    }

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(before);
    }

    @Test
    void readsWhatPeopleType() {
        for (String typed : List.of(
                "12.50",
                "12.5",
                "12,50",
                "12,5",
                "$12.50",
                "$ 12.50",
                " 12.50 ",
                "12.50 $",
                "USD 12.50",
                "usd 12.50",
                "12.50\u00a0USD",
                "US$12.50",
                "0012.50")) {
            assertThat(DOLLAR.parse(typed)).as(typed).isEqualTo(Amount.of(1250));
        }
        assertThat(DOLLAR.parse("12")).isEqualTo(Amount.of(1200));
        assertThat(DOLLAR.parse(".5")).isEqualTo(Amount.of(50));
        assertThat(DOLLAR.parse("0")).isEqualTo(Amount.ZERO);
    }

    @Test
    void readsGroupsThatHaveOneMeaning() {
        for (String typed :
                List.of("1234.50", "1,234.50", "1.234,50", "1 234.50", "1\u202f234,50", "1'234.50", "1,234.5")) {
            assertThat(DOLLAR.parse(typed)).as(typed).isEqualTo(Amount.of(123_450));
        }
        assertThat(DOLLAR.parse("1,234,567")).isEqualTo(Amount.of(123_456_700));
        assertThat(DOLLAR.parse("1 234")).isEqualTo(Amount.of(123_400));
    }

    @Test
    void readsNegativeAmounts() {
        for (String typed : List.of("-12.50", "\u221212.50", "-$12.50", "$-12.50", "$ -12.50", "- 12,50")) {
            assertThat(DOLLAR.parse(typed)).as(typed).isEqualTo(Amount.of(-1250));
        }
    }

    @Test
    void refusesWhatCouldMeanTwoThings() {
        for (String typed : List.of("1,234", "1.234", "$1,234", "12.345", "-999,000")) {
            assertThat(reason(DOLLAR, typed)).as(typed).isEqualTo("money.error.ambiguous");
        }
    }

    @Test
    void refusesMoreDecimalsThanTheCurrencyHas() {
        for (String typed : List.of("1.2345", "0.125", "1234.567", "1,234.567")) {
            assertThat(reason(DOLLAR, typed)).as(typed).isEqualTo("money.error.tooManyDecimals");
        }
        assertThat(catchThrowableOfType(UnreadableAmount.class, () -> DOLLAR.parse("1.2345"))
                        .arguments())
                .containsExactly(2);
        assertThat(reason(ShopCurrency.ofCode("JPY"), "12.5")).isEqualTo("money.error.tooManyDecimals");
    }

    @Test
    void refusesEverythingElse() {
        for (String typed : List.of(
                "twelve",
                "12a",
                "1e3",
                "\u20ac12",
                "12 50",
                "1,23,456",
                "1.234.5",
                "5.",
                "--5",
                "+5",
                "$",
                "-",
                "12.50.10",
                "\u0661\u0662",
                "0x10",
                "1,234,56")) {
            assertThat(reason(DOLLAR, typed)).as(typed).isEqualTo("money.error.unreadable");
        }
        assertThat(reason(DOLLAR, " \u00a0")).isEqualTo("money.error.missing");
        assertThat(reason(DOLLAR, "99999999999999999999")).isEqualTo("money.error.tooLarge");
    }

    /** Source of the digits: ISO 4217 (from memory, as Joda-Money's data has them). */
    @Test
    void knowsTheDigitsOfItsCurrency() {
        assertThat(ShopCurrency.ofCode("JPY").parse("12")).isEqualTo(Amount.of(12));
        assertThat(ShopCurrency.ofCode("KWD").parse("1.234")).isEqualTo(Amount.of(1234));
        assertThat(reason(ShopCurrency.ofCode("KWD"), "1,234")).isEqualTo("money.error.ambiguous");
        assertThat(ShopCurrency.ofCode("CLF").parse("1.2345")).isEqualTo(Amount.of(12_345));
        assertThat(ShopCurrency.ofCode("CLF").digits()).isEqualTo(4);
        assertThatThrownBy(() -> new ShopCurrency(CurrencyUnit.of("XXX"))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void writesPlainDecimals() {
        assertThat(DOLLAR.plain(Amount.of(-1250))).isEqualTo("-12.50");
        assertThat(DOLLAR.plain(Amount.of(5))).isEqualTo("0.05");
        assertThat(DOLLAR.plain(Amount.ZERO)).isEqualTo("0.00");
        assertThat(ShopCurrency.ofCode("JPY").plain(Amount.of(-12))).isEqualTo("-12");
    }

    @Test
    void readsPlainDecimalsStrictly() {
        for (String text :
                List.of("12.5", "12", "+1.00", "-0.00", "01.00", "1,00", " 1.00", "1.00 ", "$1.00", "", "1.000")) {
            assertThatThrownBy(() -> DOLLAR.parsePlain(text)).as(text).isInstanceOf(UnreadableAmount.class);
        }
    }

    @Test
    void writesForPages() {
        assertThat(DOLLAR.format(Amount.of(-123_450), Locale.US)).isEqualTo("\u2212$1,234.50");
        assertThat(DOLLAR.format(Amount.of(123_450), Locale.US)).isEqualTo("$1,234.50");
        assertThat(ShopCurrency.ofCode("EUR").format(Amount.of(-123_450), Locale.GERMANY))
                .isEqualTo("\u22121.234,50\u00a0\u20ac");
        assertThat(ShopCurrency.ofCode("JPY").format(Amount.of(1234), Locale.US))
                .isEqualTo("\u00a51,234");
        assertThat(ShopCurrency.ofCode("CLF").format(Amount.of(12_345), Locale.US))
                .endsWith("1.2345");
        assertThat(DOLLAR.whole(Amount.of(-123_499), Locale.US)).isEqualTo("\u2212$1,234");
        assertThat(ShopCurrency.ofCode("EUR").whole(Amount.of(123_499), Locale.GERMANY))
                .isEqualTo("1.234\u00a0\u20ac");
    }

    @Test
    void isEqualByCode() {
        assertThat(ShopCurrency.ofCode("USD"))
                .isEqualTo(DOLLAR)
                .hasSameHashCodeAs(DOLLAR)
                .hasToString("USD");
        assertThat(ShopCurrency.ofCode("EUR")).isNotEqualTo(DOLLAR);
    }

    private static String reason(ShopCurrency currency, String typed) {
        UnreadableAmount refused = catchThrowableOfType(UnreadableAmount.class, () -> currency.parse(typed));
        assertThat(refused).as(typed).isNotNull();
        return refused.messageKey();
    }

    /** Round trips on any amount, in currencies of zero to four digits. */
    static class RoundTripTest {

        private static final List<ShopCurrency> CURRENCIES = List.of("USD", "EUR", "JPY", "KWD", "CLF").stream()
                .map(ShopCurrency::ofCode)
                .toList();

        @Property
        void plainComesBack(@ForAll long minor, @ForAll @IntRange(max = 4) int which) {
            ShopCurrency currency = CURRENCIES.get(which);
            assertThat(currency.parsePlain(currency.plain(Amount.of(minor)))).isEqualTo(Amount.of(minor));
        }

        @Property
        void pagesComeBack(@ForAll int minor, @ForAll @IntRange(max = 1) int which) {
            ShopCurrency currency = CURRENCIES.get(which);
            for (Locale locale : List.of(Locale.US, Locale.GERMANY, Locale.FRANCE, Locale.forLanguageTag("tr-TR"))) {
                assertThat(currency.parse(currency.format(Amount.of(minor), locale)))
                        .isEqualTo(Amount.of(minor));
            }
        }
    }
}
