package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.MoneyPlace;
import patinary.web.Choice;

/**
 * One answer to "paid how": a money place by its id, or one of the other ways by its word.
 *
 * @param way how
 * @param place the money place, where the way is {@link Way#PLACE}
 */
record PaidWith(Way way, @Nullable UUID place) {

    private static final List<Way> OTHER = List.of(Way.OWED, Way.STORE_CREDIT, Way.OWNER);

    static Optional<PaidWith> read(String answer, List<MoneyPlace> places) {
        Optional<PaidWith> other = OTHER.stream()
                .filter(way -> way.name().equals(answer))
                .map(way -> new PaidWith(way, null))
                .findFirst();
        return other.or(() -> places.stream()
                .filter(place -> place.id().toString().equals(answer))
                .map(place -> new PaidWith(Way.PLACE, place.id()))
                .findFirst());
    }

    static String answer(Way way, @Nullable UUID place) {
        return place == null ? way.name() : place.toString();
    }

    /** Every answer; without "by the owner" for money that comes back. */
    static List<Choice> choices(List<MoneyPlace> places, boolean back) {
        List<Choice> choices = new ArrayList<>(places.stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList());
        String key = back ? "buying.back." : "buying.paid.";
        OTHER.stream()
                .filter(way -> !back || way != Way.OWNER)
                .forEach(way -> choices.add(Choice.said(way.name(), key + way.name())));
        return List.copyOf(choices);
    }

    Tender tender(int line, Amount amount) {
        return new Tender(line, way, place, amount);
    }
}
