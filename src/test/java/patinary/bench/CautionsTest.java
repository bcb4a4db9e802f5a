package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cautions of db/reference/cautions.csv, called up by words. */
class CautionsTest {

    private static final String HEADER = "id,severity,trigger_words,trigger,text,source,status\n";

    private Cautions cautions;

    @BeforeEach
    void read() throws IOException {
        try (Reader table = Files.newBufferedReader(Path.of("db/reference/cautions.csv"))) {
            cautions = Cautions.read(table);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Linseed oil, RAG-1",
        "Two coats of oil-wax, RAG-1",
        "OILED the lid, RAG-1",
        "sanded the sides, DUST-1",
        "Sanding, LEAD-3",
        "stripped the old finish, SOLV-4",
        "scraping, EYE-1",
        "used the heat  gun, HEAT-1",
        "for children, CHILD-1",
        "glazing, LEAD-7",
        "mineral spirits, SOLV-2",
        "milk paints, MILK-1"
    })
    void areCalledUpByWholeWordsInTheirUsualEndings(String text, String id) {
        assertThat(ids(text)).contains(id);
    }

    @ParameterizedTest
    @CsvSource({
        "foil, RAG-1",
        "potting soil, RAG-1",
        "a thousand sandals, DUST-1",
        "wheat, HEAT-1",
        "outstrip, SOLV-4",
        "'', RAG-1"
    })
    void areNotCalledUpByPartsOfOtherWords(String text, String id) {
        assertThat(ids(text)).doesNotContain(id);
    }

    @Test
    void standWithTheMostSeriousFirst() {
        assertThat(cautions.about(List.of("sanded", "linseed oil")))
                .extracting(Caution::severity)
                .isSorted()
                .contains(Caution.Severity.STOP, Caution.Severity.NOTE);
    }

    @Test
    void sayWhoSaysSo() {
        assertThat(cautions.about(List.of("oil")))
                .allSatisfy(caution -> assertThat(caution.source()).isNotBlank());
    }

    @Test
    void withoutWordsAreCalledUpByNothing() throws IOException {
        Cautions one = Cautions.read(new StringReader(HEADER + "X-1,NOTE,,never,Text,Source,status\n"));
        assertThat(one.about(List.of("", "anything"))).isEmpty();
    }

    @Test
    void withAnUnknownSeverityAreNotRead() {
        Reader table = new StringReader(HEADER + "X-1,LOUD,oil,oil,Text,Source,status\n");
        assertThatIllegalArgumentException().isThrownBy(() -> Cautions.read(table));
    }

    private List<String> ids(String text) {
        return cautions.about(List.of(text)).stream().map(Caution::id).toList();
    }
}
