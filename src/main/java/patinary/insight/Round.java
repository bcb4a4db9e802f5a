package patinary.insight;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.Set;
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
 * @param channel where it sold; empty where it did not, or through none
 */
record Round(UUID piece, UUID offer, @Nullable UUID set, LocalDate from, Stay stay, String channel) {

    /** The shortest first. What is in order once stays so in every part of it, and the sums that sort days and ends find them sorted. */
    static final Comparator<Round> BY_DAYS =
            Comparator.comparingInt((Round round) -> round.stay.days()).thenComparing(round -> round.stay.exit());

    /** Whether its end is one of its own among those seen before: of a set the first counts. */
    boolean ownEnd(Set<UUID> sets) {
        return set == null || sets.add(set);
    }

    /** How it ended, as a word. */
    public String exit() {
        return stay.exit().name().toLowerCase(Locale.ROOT);
    }
}
