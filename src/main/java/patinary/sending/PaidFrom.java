package patinary.sending;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;
import patinary.web.Choice;

/** The money places to choose from, and the one chosen. */
@Component
class PaidFrom {

    private final MoneyPlaces places;

    PaidFrom(MoneyPlaces places) {
        this.places = places;
    }

    List<Choice> choices() {
        return places.findAllByOrderByName().stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    /** A place that must be chosen and must be there. */
    UUID read(Answers answers, String field, String typed) {
        UUID id = answers.id(field, typed, "sending.error.place");
        if (!typed.isBlank() && places.findById(id).isEmpty()) {
            answers.wrong(field, "sending.error.place");
        }
        return id;
    }
}
