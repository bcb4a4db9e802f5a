package patinary.bench;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * A supply that was used.
 *
 * @param line order on the entry, from 1
 * @param supplyId the supply
 * @param typed the quantity as she typed it
 * @param quantity in the supply's base unit
 * @param estimated whether it was judged by eye, so that a count may correct it
 */
@Embeddable
public record SupplyUse(int line, UUID supplyId, String typed, BigDecimal quantity, boolean estimated) {}
