package patinary.buying;

import java.util.List;
import org.springframework.stereotype.Component;
import patinary.reference.ReferenceFile;
import patinary.web.Choice;

/** What an expense line can be for: the rows of {@code db/reference/expense-categories.csv}. */
@Component
class Categories {

    private final List<Choice> choices;

    Categories() {
        choices = ReferenceFile.rows("expense-categories").stream()
                .map(row -> Choice.named(row.get("key"), row.get("name")))
                .toList();
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
