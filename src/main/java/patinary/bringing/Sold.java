package patinary.bringing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What one row says.
 *
 * @param date the day, or null where the row leaves it to an earlier row of its order
 * @param gross quantity times price, before the discount
 * @param each the price of one, or null where the row gives the whole alone
 * @param discount taken off the row
 * @param ofOrder what the row says of its order, where it says it
 */
record Sold(
        Sheet.Row row,
        String reference,
        @Nullable LocalDate date,
        String title,
        String code,
        BigDecimal quantity,
        Amount gross,
        @Nullable Amount each,
        Amount discount,
        Map<Meaning, Amount> ofOrder,
        String buyer,
        String taxPlace) {}
