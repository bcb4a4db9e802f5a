package patinary.bench;

import jakarta.persistence.Embeddable;

/**
 * A use that is an ingredient of a pot.
 *
 * @param line the use's order on the entry
 * @param pot the pot's number
 */
@Embeddable
public record PotUse(int line, int pot) {}
