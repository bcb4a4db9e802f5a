package patinary.buying;

import jakarta.persistence.Embeddable;

/**
 * Says that a charge applies to a line; a charge that names no line applies to every line but charity.
 *
 * @param charge the charge's order on the receipt
 * @param line the line's order on the receipt
 */
@Embeddable
public record ChargeLine(int charge, int line) {}
