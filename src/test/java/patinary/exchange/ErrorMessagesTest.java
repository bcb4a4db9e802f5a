package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import patinary.ledger.Finding;

/** Whatever is wrong can be said in words. */
class ErrorMessagesTest {

    @Test
    void everyReasonHasItsMessage() throws IOException {
        Properties messages = new Properties();
        try (InputStream file = getClass().getResourceAsStream("/messages/exchange.properties")) {
            messages.load(file);
        }
        Stream<String> types = Arrays.stream(Type.values()).map(type -> "exchange.error." + word(type));
        Stream<String> rules = ArchiveTables.ALL.stream()
                .flatMap(table -> table.rules().stream())
                .map(rule -> "exchange.error." + rule.reason());
        Stream<String> findings = Arrays.stream(Finding.What.values()).map(what -> "exchange.check." + word(what));

        assertThat(messages.stringPropertyNames())
                .containsAll(
                        Stream.of(types, rules, findings).flatMap(keys -> keys).toList());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
