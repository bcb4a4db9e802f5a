package patinary.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import patinary.measure.Unit;

/** The files under db/reference are sound by themselves: readable, unique, complete, in step with the code. */
class ReferenceFilesTest {

    static Stream<Path> files() throws IOException {
        return Files.list(Table.FOLDER);
    }

    @ParameterizedTest
    @MethodSource("files")
    void isAWholeTable(Path file) throws IOException {
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(file)));
        Table table = Table.read(file.getFileName().toString());
        assertThat(table.rows()).isNotEmpty();
        for (CSVRecord row : table.rows()) {
            assertThat(row.isConsistent()).as("fields of row %s", row).isTrue();
            assertThat(row.stream()).as("row %s", row).allMatch(field -> field.equals(field.strip()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "units.csv, code",
        "cautions.csv, id",
        "care-lines.csv, id from",
        "expense-categories.csv, key",
        "mileage-rates.csv, jurisdiction from",
        "tax-lines.csv, table year_from meaning",
        "tax-lines.csv, table year_from line",
        "tax-map.csv, table account category",
        "home-use.csv, jurisdiction year_from",
        "self-employment.csv, jurisdiction year_from kind",
        "tax-payments.csv, jurisdiction tax_year payment",
        "tax-payments.csv, due",
        "denominations.csv, currency minor kind from"
    })
    void hasUniqueKeys(String file, String columns) throws IOException {
        assertThat(Table.read(file).keys(columns.split(" "))).doesNotHaveDuplicates();
    }

    @Test
    void unitsAreThoseOfTheCode() throws IOException {
        List<CSVRecord> rows = Table.read("units.csv").rows();
        assertThat(rows).hasSameSizeAs(Unit.values());
        for (CSVRecord row : rows) {
            Unit unit = Unit.ofCode(row.get("code"));
            assertThat(new BigDecimal(row.get("factor"))).isEqualByComparingTo(unit.factor());
            assertThat(row.get("dimension")).isEqualTo(unit.dimension().name().toLowerCase(Locale.ROOT));
            assertThat(row.get("source")).isNotBlank();
        }
    }

    @Test
    void cautionsAreWhole() throws IOException {
        for (CSVRecord row : Table.read("cautions.csv").rows()) {
            assertThat(row.get("id")).matches("[A-Z]+-[0-9]+");
            assertThat(row.get("severity")).isIn("STOP", "CHECK", "WARN", "NOTE");
            assertThat(row.get("trigger_words").split(";")).as(row.get("id")).allMatch(word -> !word.isBlank());
            assertThat(row.get("text")).as(row.get("id")).isNotBlank();
            assertThat(row.get("source")).as(row.get("id")).isNotBlank();
            assertThat(row.get("status")).as(row.get("id")).isNotBlank();
        }
    }

    @Test
    void careLinesAreWholeAndNameCautionsThatThereAre() throws IOException {
        List<String> cautions = Table.read("cautions.csv").keys("id");
        for (CSVRecord row : Table.read("care-lines.csv").rows()) {
            assertThat(row.get("id")).matches("CARE-[0-9]+");
            assertThat(row.get("always")).isIn("yes", "no");
            assertThat(row.get("always").equals("yes"))
                    .as("%s is called up by something, or always said", row.get("id"))
                    .isEqualTo(row.get("cautions").isEmpty()
                            && row.get("trigger_words").isEmpty());
            assertThat(row.get("text")).as(row.get("id")).isNotBlank().doesNotContain("{");
            assertThat(row.get("source")).as(row.get("id")).isNotBlank();
            assertThat(row.get("status")).as(row.get("id")).isNotBlank();
            if (!row.get("cautions").isEmpty()) {
                assertThat(cautions)
                        .as(row.get("id"))
                        .contains(row.get("cautions").split(";"));
            }
        }
    }

    /** What is said to a person is said in Spanish too, and calls for as much: numbers and capitals that name a thing are the same. */
    @ParameterizedTest
    @CsvSource({"cautions.csv, text", "care-lines.csv, text", "tax-lines.csv, title"})
    void whatIsSaidIsSaidInSpanishToo(String file, String column) throws IOException {
        Pattern figures = Pattern.compile("[0-9]+");
        for (CSVRecord row : Table.read(file).rows()) {
            String english = row.get(column);
            String spanish = row.get(column + "_es");
            assertThat(spanish).as(english).isNotBlank().doesNotContain("usted");
            assertThat(figures.matcher(spanish).results().map(MatchResult::group))
                    .as(english)
                    .containsAll(figures.matcher(english)
                            .results()
                            .map(MatchResult::group)
                            .toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"cautions.csv", "care-lines.csv"})
    void whatIsCalledUpInEnglishIsCalledUpInSpanishToo(String file) throws IOException {
        for (CSVRecord row : Table.read(file).rows()) {
            assertThat(row.get("trigger_words_es").isBlank())
                    .as(row.get("id"))
                    .isEqualTo(row.get("trigger_words").isBlank());
        }
    }

    /** Cautions inform; none may promise that a thing is harmless. */
    @Test
    void cautionsPromiseNothing() throws IOException {
        for (CSVRecord row : Table.read("cautions.csv").rows()) {
            assertThat(row.get("text").toLowerCase(Locale.ROOT))
                    .as(row.get("id"))
                    .doesNotContain("is safe", "lead free", "code compliant", "child safe");
            assertThat(row.get("text_es").toLowerCase(Locale.ROOT))
                    .as(row.get("id"))
                    .doesNotContain("es segur", "sin plomo", "libre de plomo", "cumple con", "apto para niños");
        }
    }
}
