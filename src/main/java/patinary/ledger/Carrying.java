package patinary.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Carries supplies forward while they are followed: each after so many of its moves, at the first day that begins then. One that
 * leaves out what a count would settle is of no use to a change before the next count, so whole ones are counted apart.
 */
final class Carrying {

    /** More uses that wait for a receipt are not carried forward: it would be as long as the moves themselves. */
    private static final int MANY_WAITING = 100;

    private static final class Since {
        private @Nullable LocalDate day;
        private int any;
        private int whole;
        private boolean tied;
    }

    private final Carried.Rule rule;
    private final SupplyBooks supplies;
    private final Map<UUID, Since> since = new HashMap<>();
    private final List<Carried> carried = new ArrayList<>();

    Carrying(Carried.Rule rule, SupplyBooks supplies) {
        this.rule = rule;
        this.supplies = supplies;
    }

    /** To be told of each move before it is followed, in canonical order. */
    void before(StrandMove move) {
        LocalDate day = move.document().date();
        for (UUID supply : Strands.of(move.move())) {
            Since last = since.computeIfAbsent(supply, id -> new Since());
            if (!last.tied && last.day != null && day.isAfter(last.day)) {
                carry(supply, day, last);
            }
            last.day = day;
            last.any++;
            last.whole++;
            last.tied |= Strands.isTied(move.move());
        }
    }

    private void carry(UUID supply, LocalDate day, Since last) {
        if (Math.max(last.any, last.whole) < rule.every() || supplies.waiting(supply) > MANY_WAITING) {
            return;
        }
        Carried now = supplies.carried(supply, day, rule.uses());
        if (last.any >= rule.every() || now.isWhole()) {
            carried.add(now);
            last.any = 0;
            last.whole = now.isWhole() ? 0 : last.whole;
        }
    }

    /** All that was carried forward, in the order of days. */
    List<Carried> carried() {
        return carried;
    }
}
