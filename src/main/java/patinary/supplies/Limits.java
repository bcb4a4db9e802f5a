package patinary.supplies;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import patinary.money.Percent;

/**
 * What she knows of a supply from its label; nothing of it is a sum.
 *
 * @param daysOpened how long it keeps once opened, or null
 * @param daysMixed how long a pot mixed with it keeps, or null
 * @param most the most of it that may go into paint, as a percentage of the paint's volume, or null
 * @param mostNote where that is from
 */
@Embeddable
public record Limits(
        @Column(name = "days_opened") @Nullable Integer daysOpened,
        @Column(name = "days_mixed") @Nullable Integer daysMixed,
        @Column(name = "most_percent") @Nullable Percent most,
        @Column(name = "most_note") String mostNote) {

    public static final Limits NONE = new Limits(null, null, null, "");

    boolean isNothing() {
        return equals(NONE);
    }
}
