package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every reason, unit and dimension has words. */
class MeasureMessagesTest {

    private final Properties messages = new Properties();

    @BeforeEach
    void read() throws IOException {
        try (var in = new InputStreamReader(
                MeasureMessagesTest.class.getResourceAsStream("/messages/measure.properties"),
                StandardCharsets.UTF_8)) {
            messages.load(in);
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void saysWhatIsWrongWithTheDimension(Unit unit) {
        for (Dimension wanted : Dimension.values()) {
            WrongDimension wrong = new WrongDimension(unit, wanted);
            assertThat(wrong.arguments())
                    .allSatisfy(key -> assertThat(messages.getProperty(key)).isNotBlank());
        }
    }

    @Test
    void readsAsASentence() {
        WrongDimension wrong = new WrongDimension(Unit.CUP, Dimension.AREA);
        Object[] words = wrong.arguments().stream().map(messages::getProperty).toArray();
        assertThat(MessageFormat.format(messages.getProperty(wrong.messageKey()), words))
                .isEqualTo("A cup measures volume; this supply is used by area");
    }

    @ParameterizedTest
    @ValueSource(strings = {"missing", "number", "ambiguous", "zeroDenominator", "unit", "unitMissing", "cut"})
    void hasWordsForEveryReason(String reason) {
        assertThat(messages.getProperty("measure.error." + reason)).isNotBlank();
    }
}
