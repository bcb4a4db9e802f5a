package patinary.selling;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A supply that a sale was packed in.
 *
 * @param line order on the sale, from 1
 * @param supplyId the supply, taken from the bench
 * @param typed the quantity as she typed it
 * @param quantity in the supply's base unit, above zero
 * @param estimated whether it was judged by eye, so that a count may correct it
 */
@Embeddable
public record Wrap(int line, UUID supplyId, String typed, BigDecimal quantity, boolean estimated) {}
