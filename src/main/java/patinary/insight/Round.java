package patinary.insight;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.survival.Stay;

/**
 * One piece's way from its first offer to its sale, to being taken down, or to today.
 *
 * @param offer its first offer
 * @param set the offer it shared with other pieces at the end, or null; a set is one event
 * @param from the first day on offer
 * @param stay its days on offer and how they ended
 */
record Round(UUID piece, UUID offer, @Nullable UUID set, LocalDate from, Stay stay) {

    /** How it ended, as a word. */
    public String exit() {
        return stay.exit().name().toLowerCase(Locale.ROOT);
    }
}
