package patinary.buyers;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who bought or paid, by the name she typed.
 *
 * @param documentId the latest sale or payment of that name, which stands for the name in an address
 * @param lastOn its day
 * @param owedMinor what is still owed for the sales
 */
record Buyer(@Nullable UUID documentId, String name, long sales, LocalDate lastOn, long owedMinor) {

    /** Whether the name is no name any more. */
    public boolean isErased() {
        return ErasedName.is(name);
    }
}
