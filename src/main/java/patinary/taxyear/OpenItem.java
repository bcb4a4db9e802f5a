package patinary.taxyear;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;

/**
 * How much was open of one item; kept with a seal as it was on that day.
 *
 * @param howMany the number of things
 * @param amountMinor what they come to in minor units, or null where they are no amounts
 */
@Embeddable
public record OpenItem(
        @Enumerated(EnumType.STRING) @Column(name = "item") ClosingItem item,
        @Column(name = "how_many") int howMany,
        @Column(name = "amount_minor") @Nullable Long amountMinor) {}
