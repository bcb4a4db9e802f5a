package patinary.bench;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;

/**
 * The part of a use that was put aside with a pot.
 *
 * @param line the use's order on the entry
 * @param supplyId the supply that the pot became
 * @param weight above zero, in the measure of the pieces' weights
 */
@Embeddable
public record UsePot(int line, UUID supplyId, BigDecimal weight) {}
