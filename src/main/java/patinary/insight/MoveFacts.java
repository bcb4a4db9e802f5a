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
 * @param spells stretches on offer
 * @param pauses stretches in which an offer paused, by offer
 * @param sold pieces as sold, the earliest first
 */
record MoveFacts(Map<UUID, LocalDate> found, List<Spell> spells, Map<UUID, List<Span>> pauses, List<Sold> sold) {

    /** A piece on offer; the names are those of the offer's channels. */
    record Spell(UUID piece, UUID offer, Span span, List<String> channels) {}

    /** A piece on one sale; amounts in minor units, cost is what the sale took out of stock net of what came back. */
    record Sold(UUID piece, LocalDate day, String channel, boolean cameBack, long net, long cost, long profit) {}

    /** The group of a piece; an empty name where it has none. */
    record Group(UUID piece, @Nullable String name) {}
}
