package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.i18n.LocaleContextHolder;

/** The cautions of db/reference/cautions.csv, called up by words. */
class CautionsTest {

    private static final String HEADER =
            "id,severity,trigger_words,trigger_words_es,trigger,text,text_es,source,status\n";

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
        "milk paints, MILK-1",
        "Aceite de linaza, RAG-1",
        "lijado por los lados, DUST-1",
        "con la pistola de calor, HEAT-1",
        "LÁMPARA de mesa, ELEC-1",
        "cuencos, LEAD-7",
        "pinturas de leche, MILK-1"
    })
    void areCalledUpByWholeWordsInTheirUsualEndings(String text, String id) {
        assertThat(ids(text)).contains(id);
    }

    @Test
    void speakTheLanguageOfThePage() {
        Caution rags = cautions.about(List.of("aceite")).stream()
                .filter(one -> one.id().equals("RAG-3"))
                .findFirst()
                .orElseThrow();
        try {
            LocaleContextHolder.setLocale(Locale.forLanguageTag("es-MX"));
            assertThat(rags.text()).startsWith("No sueltos dentro.");
            LocaleContextHolder.setLocale(Locale.US);
            assertThat(rags.text()).startsWith("Not loose indoors.");
        } finally {
            LocaleContextHolder.resetLocaleContext();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "foil, RAG-1",
        "potting soil, RAG-1",
        "a thousand sandals, DUST-1",
        "wheat, HEAT-1",
        "outstrip, SOLV-4",
        "she called, EYE-1",
        "a place in Marco's van, PEST-1",
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
        Cautions one = Cautions.read(new StringReader(HEADER + "X-1,NOTE,,,never,Text,Texto,Source,status\n"));
        assertThat(one.about(List.of("", "anything"))).isEmpty();
    }

    @Test
    void withAnUnknownSeverityAreNotRead() {
        Reader table = new StringReader(HEADER + "X-1,LOUD,oil,aceite,oil,Text,Texto,Source,status\n");
        assertThatIllegalArgumentException().isThrownBy(() -> Cautions.read(table));
    }

    private List<String> ids(String text) {
        return cautions.about(List.of(text)).stream().map(Caution::id).toList();
    }
}
