package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.i18n.LocaleContextHolder;

class TaxTablesTest {

    /** Whoever fills in an official form finds its own words; the plain list has none but ours. */
    @Test
    void aLineIsNamedInTheLanguageOfThePageWithTheWordsOfTheForm() {
        TaxLine official =
                TaxTables.load().table("us-schedule-c", 2025).line("returns").orElseThrow();
        TaxLine ours = TaxTables.load().table("plain", 2025).line("returns").orElseThrow();
        try {
            LocaleContextHolder.setLocale(Locale.forLanguageTag("es-US"));
            assertThat(official.named()).isEqualTo("Devoluciones y rebajas · Returns and allowances");
            assertThat(ours.named()).isEqualTo("Reembolsos");
            LocaleContextHolder.setLocale(Locale.US);
            assertThat(official.named()).isEqualTo("Returns and allowances");
        } finally {
            LocaleContextHolder.resetLocaleContext();
        }
    }

    /** As a person with the form beside the screen goes down both. */
    @ParameterizedTest
    @CsvSource({
        "us-schedule-c, 2023",
        "us-schedule-c, 2024",
        "us-schedule-c, 2025",
        "us-schedule-c, 2026",
        "uk-self-employment-short, 2023",
        "uk-self-employment-short, 2024",
        "plain, 2025"
    })
    void linesStandInTheOrderOfTheForm(String name, int year) {
        List<TaxLine> lines = TaxTables.load().table(name, year).lines();
        List<String> parts = new ArrayList<>();
        for (TaxLine line : lines) {
            if (parts.isEmpty() || !parts.get(parts.size() - 1).equals(line.part())) {
                parts.add(line.part());
            }
        }

        assertThat(lines).isNotEmpty().isSortedAccordingTo(TaxLine.BY_NUMBER);
        assertThat(parts).as("each part stands together").doesNotHaveDuplicates();
    }

    /** 27a and 27b changed places: Schedule C (Form 1040) of 2023 against those of later years. */
    @ParameterizedTest
    @CsvSource({"2023, 27a", "2025, 27b"})
    void theLineOfOtherExpensesStandsBeforeTheirTotal(int year, String number) {
        List<TaxLine> lines = TaxTables.load().table("us-schedule-c", year).lines();

        assertThat(lines.stream().filter(line -> line.meaning().equals("other_expenses")))
                .extracting(TaxLine::line)
                .containsExactly(number);
        assertThat(lines.stream().map(TaxLine::meaning).toList())
                .containsSubsequence("wages", "other_expenses", "total_expenses", "net_profit");
    }
}
