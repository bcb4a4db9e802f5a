package patinary.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The form of the header: a string of RFC 8941 section 3.3.3, as the draft on the Idempotency-Key header asks for. */
class EntryKeyTest {

    private static final String ID = "8e03978e-40d5-43e8-bc93-6894a57f9324";

    @Test
    void isAnIdInQuotationMarks() {
        assertThat(EntryKey.read('"' + ID + '"')).contains(UUID.fromString(ID));
        assertThat(EntryKey.read(" \"" + ID.toUpperCase() + "\" ")).contains(UUID.fromString(ID));
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(
            strings = {
                "",
                "\"\"",
                ID,
                "'" + ID + "'",
                "\"8e03978e\"",
                "\"" + ID + "\";a=1",
                "\"" + ID,
                "\"1-1-1-1-1\"",
                "\"" + ID + "\", \"" + ID + "\""
            })
    void anythingElseIsNone(String header) {
        assertThat(EntryKey.read(header)).isEmpty();
    }
}
