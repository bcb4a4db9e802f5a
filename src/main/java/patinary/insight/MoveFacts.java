package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the pieces, as plain rows.
 *
 * @param found the day each piece came
 * @param channels the names of an offer's channels; of most offers the same few, whose lists are shared
 * @param offers when they were on offer and when they sold
 */
record MoveFacts(Map<UUID, LocalDate> found, Map<UUID, List<String>> channels, OfferFacts offers) {

    /** The group of a piece; an empty name where it has none. */
    record Group(UUID piece, @Nullable String name) {

        String named() {
            return name == null ? "" : name;
        }
    }

    /** The same, of offers that stood there. */
    MoveFacts on(Map<UUID, List<String>> named) {
        return new MoveFacts(found, named, offers);
    }

    /** Where an offer stood; nowhere that is known for one that has no channel. */
    List<String> channels(UUID offer) {
        return channels.getOrDefault(offer, List.of());
    }
}
