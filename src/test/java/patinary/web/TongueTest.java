package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.validation.Errors;
import org.springframework.validation.MapBindingResult;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.ShopCurrency;

/** What a browser asks for, and how days, numbers and amounts are written; by Unicode CLDR as the platform carries it. */
class TongueTest {

    @ParameterizedTest
    @CsvSource({
        "es-MX, es-MX",
        "es, es-US",
        "es-419, es-US",
        "de-DE;es-ES;en, es-ES",
        "fr-FR, en-US",
        "en-GB, en-GB",
        "'', en-US"
    })
    void speaksTheFirstLanguageAskedForThatItKnows(String asked, String spoken) {
        List<Locale> wishes = asked.isEmpty()
                ? List.of()
                : List.of(asked.split(";")).stream().map(Locale::forLanguageTag).toList();

        assertThat(Tongue.best(wishes).toLanguageTag()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource({"US, true", "CA, true", "MX, true", "GB, false", "ES, false", "AR, false", "DE, false"})
    void knowsThePaperOfACountry(String country, boolean letter) {
        assertThat(Tongue.isLetter(Tongue.SPANISH.in(country))).isEqualTo(letter);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-US | USD | $1,234.50 | $1,234 | 1234.5 | 8.25% | 4 Mar 2026 | 4 Mar 2026, 15:05",
                "es-US | USD | $1,234.50 | $1,234 | 1234.5 | 8.25 % | 4 mar. 2026 | 4 mar. 2026, 15:05",
                "es-MX | MXN | $1,234.50 | $1,234 | 1234.5 | 8.25 % | 4 mar. 2026 | 4 mar. 2026, 15:05",
                "es-ES | EUR | 1.234,50 € | 1.234 € | 1234,5 | 8,25 % | 4 mar 2026 | 4 mar 2026, 15:05"
            })
    void writesByTheCustomsOfTheCountry(
            String tag,
            String currency,
            String amount,
            String whole,
            String number,
            String percent,
            String day,
            String moment) {
        Fmt fmt = fmt(tag, currency);

        assertThat(fmt.money(Amount.of(123_450)).replace('\u00a0', ' ')).isEqualTo(amount);
        assertThat(fmt.whole(Amount.of(123_450)).replace('\u00a0', ' ')).isEqualTo(whole);
        assertThat(fmt.number(new BigDecimal("1234.50"))).isEqualTo(number);
        assertThat(fmt.percent(Percent.of("8.25")).replace('\u00a0', ' ')).isEqualTo(percent);
        assertThat(fmt.percent(new BigDecimal("8.250"))).isEqualTo(fmt.percent(Percent.of("8.25")));
        assertThat(fmt.date(LocalDate.of(2026, 3, 4))).isEqualTo(day);
        assertThat(fmt.moment(Instant.parse("2026-03-04T15:05:00Z"))).isEqualTo(moment);
    }

    /** One under the other, the marks stand in one line: no row drops a nought that its neighbour needs. */
    @Test
    void aColumnOfPercentagesHasTheSamePlaces() {
        Fmt fmt = fmt("en-US", "USD");
        List<Percent> rates = List.of(Percent.of("7.0000"), Percent.of("8.2500"));

        assertThat(fmt.share(Percent.of("12.0"))).isEqualTo("12.0%");
        assertThat(fmt.share(Percent.of("-12.5"))).isEqualTo("−12.5%");
        assertThat(fmt.share(null)).isEqualTo("–");
        assertThat(fmt.ratio(new BigDecimal("0.90"))).isEqualTo("0.90");
        assertThat(fmt.ratio(null)).isEqualTo("–");
        assertThat(rates).extracting(rate -> fmt.percent(rate, rates)).containsExactly("7.00%", "8.25%");
        assertThat(fmt.percent(null, rates)).isEqualTo("–");
    }

    /** A figure copied from a page into a field is the same figure, or is asked again; it is never another one. */
    @ParameterizedTest
    @CsvSource({"en-US, USD", "es-US, USD", "es-MX, MXN", "es-ES, EUR"})
    void whatIsShownIsReadAsShown(String tag, String currency) {
        Fmt fmt = fmt(tag, currency);
        for (long minor : new long[] {0, 5, 99, 100, 1_234, 123_400, 123_456, 123_456_700}) {
            assertThat(ShopCurrency.ofCode(currency).parse(fmt.money(Amount.of(minor))))
                    .isEqualTo(Amount.of(minor));
        }
    }

    @ParameterizedTest
    @CsvSource({"en-US", "es-US", "es-ES"})
    void aPercentageThatIsShownIsReadAsShown(String tag) {
        Errors errors = new MapBindingResult(new HashMap<>(), "form");
        Answers answers = new Answers(errors, ShopCurrency.ofCode("USD"));

        assertThat(answers.percent("rate", fmt(tag, "USD").percent(Percent.of("8.25"))))
                .hasValueSatisfying(read -> assertThat(read.value()).isEqualByComparingTo("8.25"));
        assertThat(errors.hasErrors()).isFalse();
    }

    private static Fmt fmt(String tag, String currency) {
        House house = mock(House.class);
        when(house.locale()).thenReturn(Locale.forLanguageTag(tag));
        when(house.currency()).thenReturn(ShopCurrency.ofCode(currency));
        when(house.zone()).thenReturn(ZoneOffset.UTC);
        return new Fmt(house);
    }
}
