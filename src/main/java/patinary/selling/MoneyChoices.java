package patinary.selling;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;
import patinary.web.Choice;

/** The money places offered by a form, and the one chosen. */
@Component
class MoneyChoices {

    private final MoneyPlaces places;

    MoneyChoices(MoneyPlaces places) {
        this.places = places;
    }

    /** All places, or those of some kinds. */
    List<Choice> choices(MoneyPlace.Kind... kinds) {
        return places.findAllByOrderByName().stream()
                .filter(place -> kinds.length == 0 || Arrays.asList(kinds).contains(place.kind()))
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    /** The first cash box, for the stall. */
    Optional<MoneyPlace> cash() {
        return places.findAllByOrderByName().stream()
                .filter(place -> place.kind() == MoneyPlace.Kind.CASH)
                .findFirst();
    }

    /** A place that must be chosen and must be there. */
    UUID read(Answers answers, String field, String typed) {
        UUID id = answers.id(field, typed, "selling.error.place");
        if (!typed.isBlank() && places.findById(id).isEmpty()) {
            answers.wrong(field, "selling.error.place");
        }
        return id;
    }
}
