package patinary.supplies;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One of her own measures turned out to be another size.
 *
 * @param fromDay what is dated on this day or later is read with the new size
 * @param was the size before it, in the supply's base unit
 * @param now the size from that day on
 */
@Embeddable
public record MeasureChange(
        String name,
        LocalDate fromDay,
        @Column(name = "was_quantity") BigDecimal was,
        @Column(name = "now_quantity") BigDecimal now) {}
