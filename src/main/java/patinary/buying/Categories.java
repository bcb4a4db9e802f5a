package patinary.buying;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.reference.ReferenceFile;
import patinary.web.Choice;
import patinary.web.Tongue;

/** What an expense line can be for: the rows of {@code db/reference/expense-categories.csv}, in the language of the page. */
@Component
class Categories {

    private final List<CSVRecord> rows = ReferenceFile.rows("expense-categories");

    List<Choice> choices() {
        String name = Tongue.column("name", LocaleContextHolder.getLocale());
        return rows.stream()
                .map(row -> Choice.named(row.get("key"), row.get(name)))
                .toList();
    }

    boolean has(String key) {
        return rows.stream().anyMatch(row -> row.get("key").equals(key));
    }

    String name(String key) {
        return choices().stream()
                .filter(choice -> choice.value().equals(key))
                .map(Choice::text)
                .findFirst()
                .orElse(key);
    }
}
