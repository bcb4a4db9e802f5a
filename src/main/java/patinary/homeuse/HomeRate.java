package patinary.homeuse;

import java.math.BigDecimal;

/**
 * What the simplified way allows in a year.
 *
 * @param minorPerSquareFoot minor units of money for a square foot used the whole year
 * @param mostSquareFeet no more than these count
 * @param source what set it
 * @param status how well the source is known
 */
public record HomeRate(long minorPerSquareFoot, BigDecimal mostSquareFeet, String source, String status) {}
