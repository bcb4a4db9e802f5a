package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** What becomes of an offer: pure functions from one content to the next, or nothing where it cannot be. */
final class OfferChange {

    private OfferChange() {}

    /** Another price from a day on; a price of that very day is replaced. */
    static Optional<Offer.Content> priced(Offer.Content offer, LocalDate day, Amount price) {
        if (day.isBefore(offer.date())) {
            return Optional.empty();
        }
        List<Offer.Price> prices = new ArrayList<>(offer.prices().stream()
                .filter(old -> !old.validFrom().equals(day))
                .toList());
        prices.add(new Offer.Price(day, price));
        return Optional.of(with(offer, offer.endedOn(), prices, offer.pauses()));
    }

    /** Not to be had from a day on, that day included. */
    static Optional<Offer.Content> paused(Offer.Content offer, LocalDate day) {
        boolean overlaps = offer.pauses().stream()
                .anyMatch(pause -> pause.pausedTo() == null || !pause.pausedTo().isBefore(day));
        if (day.isBefore(offer.date()) || overlaps || offer.endedOn() != null) {
            return Optional.empty();
        }
        List<Offer.Pause> pauses = new ArrayList<>(offer.pauses());
        pauses.add(new Offer.Pause(day, null));
        return Optional.of(with(offer, null, offer.prices(), pauses));
    }

    /** To be had again on a day; a pause that would have no day left falls away. */
    static Optional<Offer.Content> resumed(Offer.Content offer, LocalDate day) {
        Optional<Offer.Pause> open = offer.pauses().stream()
                .filter(pause -> pause.pausedTo() == null)
                .findFirst()
                .filter(pause -> !day.isBefore(pause.pausedFrom()));
        return open.map(pause -> {
            List<Offer.Pause> pauses = new ArrayList<>(offer.pauses());
            pauses.remove(pause);
            if (day.isAfter(pause.pausedFrom())) {
                pauses.add(new Offer.Pause(pause.pausedFrom(), day.minusDays(1)));
            }
            return with(offer, offer.endedOn(), offer.prices(), pauses);
        });
    }

    /** Withdrawn unsold, with its last day; null puts it back. */
    static Optional<Offer.Content> ended(Offer.Content offer, @Nullable LocalDate day) {
        if (day != null && day.isBefore(offer.date())) {
            return Optional.empty();
        }
        return Optional.of(with(offer, day, offer.prices(), offer.pauses()));
    }

    static Offer.Content with(
            Offer.Content offer, @Nullable LocalDate endedOn, List<Offer.Price> prices, List<Offer.Pause> pauses) {
        return new Offer.Content(
                offer.date(),
                offer.note(),
                offer.title(),
                offer.alikeId(),
                endedOn,
                offer.pieces(),
                offer.channels(),
                prices,
                pauses);
    }
}
