package patinary.bench;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.ToolUse;
import patinary.supplies.Wear;

/**
 * A supply that was used.
 *
 * @param line order on the entry, from 1
 * @param supplyId the supply
 * @param typed the quantity as she typed it
 * @param quantity in the supply's base unit
 * @param estimated whether it was judged by eye, so that a count may correct it
 * @param toolUses how many uses of a tool it was; null where the supply is no tool whose price is spread over its uses
 */
@Embeddable
public record SupplyUse(
        int line,
        UUID supplyId,
        String typed,
        BigDecimal quantity,
        boolean estimated,
        @Nullable BigDecimal toolUses) {

    private static final int SCALE = 14;

    /** A use of what is no tool. */
    public SupplyUse(int line, UUID supplyId, String typed, BigDecimal quantity, boolean estimated) {
        this(line, supplyId, typed, quantity, estimated, null);
    }

    /** A use of a supply as it is known on a day. */
    static SupplyUse on(
            LocalDate day, int line, SupplyCatalog.Known supply, String typed, BigDecimal quantity, boolean estimated) {
        BigDecimal uses = supply.facts().wear() != Wear.BY_USE
                ? null
                : ToolUse.size(supply.measuresOn(day))
                        .map(size -> quantity.divide(size, SCALE, RoundingMode.HALF_UP))
                        .filter(times -> times.signum() > 0)
                        .orElse(null);
        return new SupplyUse(line, supply.id(), typed, quantity, estimated, uses);
    }

    /** Whether it wears a tool, and so takes no more of it than there is. */
    boolean wears() {
        return toolUses != null;
    }
}
