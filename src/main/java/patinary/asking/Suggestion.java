package patinary.asking;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * A mark-down that is due.
 *
 * @param days on offer, pauses left out
 * @param floor the lowest price that brings the money back on every channel it is offered on
 */
record Suggestion(
        UUID offerId,
        String title,
        @Nullable String codes,
        LocalDate since,
        long days,
        Amount first,
        Amount present,
        Amount floor,
        MarkDown down) {}
