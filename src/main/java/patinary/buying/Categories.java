package patinary.buying;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.springframework.stereotype.Component;
import patinary.web.Choice;

/** What an expense line can be for: the rows of {@code db/reference/expense-categories.csv}. */
@Component
class Categories {

    private static final String RESOURCE = "/db/reference/expense-categories.csv";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final List<Choice> choices;

    Categories() {
        try (InputStream in = Categories.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            try (CSVParser parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                choices = parser.stream()
                        .map(row -> Choice.named(row.get("key"), row.get("name")))
                        .toList();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    List<Choice> choices() {
        return choices;
    }

    boolean has(String key) {
        return choices.stream().anyMatch(choice -> choice.value().equals(key));
    }

    String name(String key) {
        return choices.stream()
                .filter(choice -> choice.value().equals(key))
                .map(Choice::text)
                .findFirst()
                .orElse(key);
    }
}
