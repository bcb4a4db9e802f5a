package patinary.selling;

import jakarta.persistence.Embeddable;
import java.util.UUID;

/**
 * A supply of one of her ways of packing.
 *
 * @param line order, from 1
 * @param supplyId the supply
 * @param typed how much, in the words she types; read anew for each sale
 * @param estimated whether it is judged by eye
 */
@Embeddable
record ParcelWrap(int line, UUID supplyId, String typed, boolean estimated) {}
