package patinary.ledger;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/**
 * The part of a use that went into a mixed pot put aside for later.
 *
 * @param pot the supply that the pot became
 * @param weight zero or more; in the same measure as the weights of the pieces beside it
 */
public record PotShare(UUID pot, BigDecimal weight) {

    static List<PotShare> canonical(List<PotShare> shares) {
        return shares.stream()
                .sorted(Comparator.comparing(share -> share.pot().toString()))
                .toList();
    }
}
