package patinary.spending;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.ledger.Refusal;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;
import patinary.web.Choice;

/** What the pages of all money documents need alike. */
@Component
class MoneyDesk {

    final MoneyBook book;
    final Refusal refusal;
    final CurrentShop shop;
    final ExpenseCategories categories = ExpenseCategories.load();
    private final MoneyPlaces places;

    MoneyDesk(MoneyBook book, Refusal refusal, CurrentShop shop, MoneyPlaces places) {
        this.book = book;
        this.refusal = refusal;
        this.shop = shop;
        this.places = places;
    }

    List<Choice> places() {
        return places.findAllByOrderByName().stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    /** The money place chosen in a field; an unknown one is an error beside it. */
    UUID place(Answers answers, String field, String answer) {
        UUID id = answers.id(field, answer, "spending.error.place");
        boolean known = places.findById(id).map(MoneyPlace::id).isPresent();
        if (!known && !answer.isBlank()) {
            answers.wrong(field, "spending.error.place");
        }
        return id;
    }
}
