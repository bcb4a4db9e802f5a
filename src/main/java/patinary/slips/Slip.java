package patinary.slips;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a slip seems to say; all of it a suggestion. Amounts are in hundredths.
 *
 * @param shop the line that looks like the shop's name, or empty
 * @param dates none, one, or both readings of an ambiguous one
 */
public record Slip(
        String shop,
        List<LocalDate> dates,
        List<Item> items,
        @Nullable Long subtotal,
        @Nullable Long tax,
        @Nullable Long discount,
        @Nullable Long total) {

    /**
     * One thing bought.
     *
     * @param price of one of it
     * @param net what the slip charges for all of it, before a discount
     * @param discount taken off this line, not negative
     * @param confidence of the least sure word, 0 to 100
     */
    public record Item(String title, int quantity, long price, long net, long discount, double confidence) {}

    /** Whether lines, less discounts, plus tax come to the total that stands on the slip. */
    public boolean addsUp() {
        if (total == null) {
            return false;
        }
        long lines =
                items.stream().mapToLong(item -> item.net() - item.discount()).sum();
        long before = lines - (discount == null ? 0 : discount);
        return before == total || before + (tax == null ? 0 : tax) == total;
    }
}
