package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.web.Choice;

class OfferedTest {

    /** ISO 4217, list one, has the first; list three, of codes that were withdrawn, has the others. */
    @Test
    void offersMoneyThatIsInUseAndNoOther() {
        List<String> codes =
                Offered.currencies(Locale.US).stream().map(Choice::value).toList();

        assertThat(codes)
                .contains("USD", "EUR", "GBP", "CAD", "AUD", "JPY", "KWD", "MXN", "COP", "CLP", "ARS", "CHF", "XPF")
                .doesNotContain("DEM", "FRF", "ESP", "ITL", "ADP", "CSD", "ZMK", "VEB", "GHC", "TRL")
                .doesNotContain("CLF", "CHE", "USN", "MXV", "XDR", "XAU", "XTS", "XXX")
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void namesMoneyInTheLanguageOfThePage() {
        assertThat(Offered.currencies(Locale.US)).contains(Choice.named("USD", "USD – US Dollar"));
        assertThat(Offered.currencies(Locale.forLanguageTag("es-ES")))
                .contains(Choice.named("USD", "USD – dólar estadounidense"));
    }

    @ParameterizedTest
    @CsvSource({
        "America/New_York, America/New_York",
        "Europe/Madrid, Europe/Madrid",
        "UTC, ''",
        "Etc/UTC, ''",
        "Etc/GMT+5, ''",
        "GMT, ''",
        "Z, ''",
        "+02:00, ''"
    })
    void takesAZoneForThePlaceOfTheShopOnlyWhereItIsAPlace(String machine, String place) {
        assertThat(Offered.placeOf(ZoneId.of(machine))).isEqualTo(place);
    }
}
