package patinary.sending;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the things of a sale say about its parcel before it is packed: a start for what she types, never kept by itself.
 *
 * @param grams what all of them weigh together; null where one of them was not weighed
 * @param size of the one thing there is; empty where there are several, as nobody knows how they lie
 */
record Unpacked(@Nullable BigDecimal grams, String size) {

    /**
     * One thing of a sale.
     *
     * @param grams what it weighs, or null where it was not weighed
     * @param size as typed, or empty
     */
    record Thing(@Nullable BigDecimal grams, String size) {}

    static Unpacked of(List<Thing> things) {
        boolean weighed = !things.isEmpty() && things.stream().allMatch(thing -> thing.grams() != null);
        BigDecimal grams = weighed
                ? things.stream()
                        .map(thing -> Objects.requireNonNull(thing.grams()))
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                : null;
        return new Unpacked(grams, things.size() == 1 ? things.get(0).size() : "");
    }
}
