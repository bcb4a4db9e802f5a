package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** Adds up what became of pieces, by kind and style. */
final class Pools {

    private static final Comparator<@Nullable UUID> IDS = Comparator.nullsFirst(Comparator.naturalOrder());

    private static final Comparator<PayRow.Group> BY_NAME = Comparator.comparing(PayRow.Group::kind)
            .thenComparing(PayRow.Group::style)
            .thenComparing(PayRow.Group::kindId, IDS)
            .thenComparing(PayRow.Group::styleId, IDS);

    private Pools() {}

    /**
     * Every piece in exactly one group of kind and style, as it was known on a day: nothing of later sales, and as tried only what had
     * its full time by then, whether it sold or not.
     *
     * @param horizonDays the full time, in days on offer
     */
    static Map<PayRow.Group, Pool> of(Collection<Outcome> pieces, int horizonDays, LocalDate day) {
        Map<PayRow.Group, Pool> pools = new HashMap<>();
        pieces.forEach(piece -> pools.merge(piece.group(), of(piece, horizonDays, day), Pool::plus));
        // By name only at the end: there are few groups, and many pieces.
        Map<PayRow.Group, Pool> byName = new TreeMap<>(BY_NAME);
        byName.putAll(pools);
        return byName;
    }

    private static Pool of(Outcome piece, int horizonDays, LocalDate day) {
        LocalDate sold = piece.soldOn();
        Amount net = piece.net();
        boolean known = net != null && sold != null && !sold.isAfter(day);
        return new Pool(
                1,
                tries(piece, horizonDays, day),
                known ? Moments.of(net.minor()) : Moments.NONE,
                known ? Moments.of(piece.off().minor()) : Moments.NONE,
                worked(piece, BigDecimal.valueOf(piece.supplies().minor())),
                worked(piece, piece.minutes()),
                worked(piece, BigDecimal.valueOf(piece.bought().minor())));
    }

    private static Tries tries(Outcome piece, int horizonDays, LocalDate day) {
        LocalDate from = piece.clockFrom();
        LocalDate full = from == null ? null : from.plusDays(horizonDays);
        if (full == null || full.isAfter(day)) {
            return Tries.NONE;
        }
        LocalDate sold = piece.soldOn();
        return new Tries(1, sold != null && !sold.isAfter(full) ? 1 : 0);
    }

    private static Moments worked(Outcome piece, BigDecimal figure) {
        return piece.worked() ? Moments.of(figure) : Moments.NONE;
    }
}
