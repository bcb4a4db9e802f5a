package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What became of a piece that was offered, as it stands today.
 *
 * @param clockFrom its first day on offer; null where that tells nothing
 * @param net what it left of its sale; null while unsold
 * @param worked whether all its supplies and minutes are in the books
 */
record Outcome(
        UUID piece,
        PayRow.Group group,
        @Nullable LocalDate clockFrom,
        @Nullable LocalDate soldOn,
        @Nullable Amount net,
        Amount supplies,
        BigDecimal minutes,
        Amount bought,
        boolean worked) {}
