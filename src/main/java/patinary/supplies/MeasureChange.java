package patinary.supplies;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One of her own measures turned out to be another size.
 *
 * @param fromDay what is dated on this day or later is read with the new size
 * @param was the size before it, in the supply's base unit
 * @param now the size from that day on
 */
public record MeasureChange(String name, LocalDate fromDay, BigDecimal was, BigDecimal now) {}
