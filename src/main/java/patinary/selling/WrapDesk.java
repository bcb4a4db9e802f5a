package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Ids;

/** What the forms on which something is packed have in common: the rows, and the ways that fill them with one tap. */
@Component
class WrapDesk {

    /** Fills the rows as the latest packed sale of the channel had them. */
    static final String LAST = "pack-last";

    private static final String PACK = "pack-";
    private static final String UNWRAP = "unwrap-";

    /** A way of packing that is offered; without a name it is the latest of the channel. */
    record Offered(String act, @Nullable String name, String summary) {}

    private final ParcelBook parcels;
    private final WrapSupplies supplies;

    WrapDesk(ParcelBook parcels, WrapSupplies supplies) {
        this.parcels = parcels;
        this.supplies = supplies;
    }

    /** Whether a button's word is one of this desk's. */
    static boolean isOwn(String act) {
        return act.startsWith(PACK) || act.startsWith(UNWRAP) || act.equals("wrap-more");
    }

    /**
     * Carries out one of the buttons. A way that is tapped takes the place of what stood there; one that says nothing, as
     * a channel's latest where it has none, changes nothing.
     */
    void act(List<WrapLine> wraps, String act, @Nullable UUID channel, UUID sale) {
        if (act.startsWith(PACK)) {
            List<WrapLine> rows = rows(act, channel, sale);
            if (!rows.isEmpty()) {
                wraps.clear();
                wraps.addAll(rows);
            }
        } else if (act.startsWith(UNWRAP)) {
            for (int i = wraps.size() - 1; i >= 0; i--) {
                if (act.equals(UNWRAP + i)) {
                    wraps.remove(i);
                }
            }
        }
    }

    /** The rows of a way that was tapped. */
    List<WrapLine> rows(String act, @Nullable UUID channel, UUID sale) {
        if (act.equals(LAST)) {
            return channel == null ? List.of() : parcels.last(channel, sale);
        }
        return Ids.read(act.substring(Math.min(PACK.length(), act.length())))
                .flatMap(parcels::find)
                .map(ParcelBook.Kept::wraps)
                .orElse(List.of());
    }

    /** The latest of the channel first, then her own by name. */
    List<Offered> offered(@Nullable UUID channel, UUID sale) {
        List<Offered> ways = new ArrayList<>();
        if (channel != null) {
            List<WrapLine> last = parcels.last(channel, sale);
            Optional.of(last)
                    .filter(rows -> !rows.isEmpty())
                    .ifPresent(rows -> ways.add(new Offered(LAST, null, summary(rows))));
        }
        parcels.all().forEach(kept -> ways.add(new Offered(PACK + kept.id(), kept.name(), kept.summary())));
        return ways;
    }

    /** Puts what the rows need into the model, with an empty row to type into. */
    void show(Model model, List<WrapLine> wraps, @Nullable UUID channel, UUID sale) {
        model.addAttribute("packed", wraps.stream().anyMatch(wrap -> !wrap.isEmpty()));
        if (wraps.isEmpty() || !wraps.get(wraps.size() - 1).isEmpty()) {
            wraps.add(new WrapLine());
        }
        model.addAttribute("wrapSupplies", supplies.choices());
        model.addAttribute("ways", offered(channel, sale));
    }

    private static String summary(List<WrapLine> rows) {
        return String.join(", ", rows.stream().map(row -> row.quantity).toList());
    }
}
