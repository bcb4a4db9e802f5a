package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates, numbers and letters as files write them. Readings worked by hand. */
class FormsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "1,234.56 | POINT | 1234.56",
                "1.234,56 | COMMA | 1234.56",
                "1 234,56 | COMMA | 1234.56",
                "1'234.56 | POINT | 1234.56",
                "12,34,567.00 | POINT | 1234567.00",
                "1234.5 | POINT | 1234.5",
                "-12.50 | POINT | -12.50",
                "12.50- | POINT | -12.50",
                "\u221212.50 | POINT | -12.50",
                "(12.50) | POINT | -12.50",
                "$12.50 | POINT | 12.50",
                "-$12.50 | POINT | -12.50",
                "$-12.50 | POINT | -12.50",
                "12,50 \u20ac | COMMA | 12.50",
                "USD 12.50 | POINT | 12.50",
                "12.50 kr. | POINT | 12.50",
                ".5 | POINT | 0.5",
                "12. | POINT | 12",
                "7 | COMMA | 7"
            })
    void readsNumbers(String text, NumberForm form, String value) {
        assertThat(form.read(text)).map(NumberForm.Read::value).contains(new java.math.BigDecimal(value));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.234,56 | POINT", "1,234.56 | COMMA", "12,3 | POINT", "1,2345 | POINT", "--5 | POINT", "-(5) | POINT",
                        "5-5 | POINT",
                "$5 USD | POINT", "five | POINT", ". | POINT", "- | POINT", "1.2.3 | POINT", "5% | POINT", "1e5 | POINT"
            })
    void refusesWhatIsNoNumber(String text, NumberForm form) {
        assertThat(form.read(text)).isEmpty();
    }

    @Test
    void leavesOpenWhatIsTwoNumbers() {
        assertThat(NumberForm.fitting(List.of("1,234"))).hasSize(2);
        assertThat(NumberForm.differ(List.of("1,234"))).isTrue();
        assertThat(NumberForm.differ(List.of("12", "1234"))).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2025-03-14 | YEAR_MONTH_DAY",
                "2025/3/14 | YEAR_MONTH_DAY",
                "20250314 | YEAR_MONTH_DAY",
                "2025-03-14T23:59:59+01:00 | YEAR_MONTH_DAY",
                "2025-03-14 10:22:00 UTC | YEAR_MONTH_DAY",
                "14.03.2025 | DAY_MONTH_YEAR",
                "14. 3. 2025 | DAY_MONTH_YEAR",
                "14/3/25 | DAY_MONTH_YEAR",
                "03/14/2025 | MONTH_DAY_YEAR",
                "3-14-25 10:22 AM | MONTH_DAY_YEAR",
                "14 Mar 2025 | MONTH_AS_WORD",
                "14-Mar-25 | MONTH_AS_WORD",
                "March 14, 2025 | MONTH_AS_WORD",
                "Mar 14th, 2025 | MONTH_AS_WORD",
                "14. M\u00e4rz 2025 | MONTH_AS_WORD",
                "14 mars 2025 | MONTH_AS_WORD",
                "Fri, 14 Mar 2025 10:22:00 +0000 | MONTH_AS_WORD",
                "14 Mar 2025 at 10:22 | MONTH_AS_WORD"
            })
    void readsDates(String text, DateForm form) {
        assertThat(form.read(text)).contains(LocalDate.of(2025, 3, 14));
        assertThat(DateForm.fitting(List.of(text))).containsExactly(form);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2025-02-30 | YEAR_MONTH_DAY",
                "31/04/2025 | DAY_MONTH_YEAR",
                "13/13/2025 | MONTH_DAY_YEAR",
                "14 Foo 2025 | MONTH_AS_WORD",
                "2025-03-14x | YEAR_MONTH_DAY",
                "2025-03 | YEAR_MONTH_DAY",
                "today | MONTH_AS_WORD"
            })
    void refusesWhatIsNoDay(String text, DateForm form) {
        assertThat(form.read(text)).isEmpty();
    }

    @Test
    void leavesOpenWhatIsTwoDays() {
        assertThat(DateForm.fitting(List.of("03/04/2025", "05/06/2025")))
                .containsExactly(DateForm.DAY_MONTH_YEAR, DateForm.MONTH_DAY_YEAR);
        byte[] file =
                "Order,Date,Price\n1,03/04/2025,5\n2,05/06/2025,6\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertThat(MappingGuess.of(file).dates()).isNull();
    }

    @Test
    void comparesTitles() {
        Likeness likeness = new Likeness(List.of(
                new Goods.Piece("P1", "Painted tin tray", true),
                new Goods.Piece("P2", "Enamel jug", true),
                new Goods.Piece("P3", "Caf\u00e9 sign", true)));
        // " ti","tin","in "," tr","tra","ray","ay " shared: 7 of 7 and of 14 threes; 2 x 7 / 21 = 0.67.
        assertThat(likeness.most("TIN TRAY", 5)).singleElement().satisfies(like -> {
            assertThat(like.piece().code()).isEqualTo("P1");
            assertThat(like.likeness()).isEqualTo(14.0 / 21);
        });
        assertThat(likeness.most("cafe sign", 5))
                .first()
                .satisfies(like -> assertThat(like.likeness()).isEqualTo(1));
        assertThat(likeness.most("Stool", 5)).isEmpty();
        assertThat(likeness.most("", 5)).isEmpty();
    }
}
