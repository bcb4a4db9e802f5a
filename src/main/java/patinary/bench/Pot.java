package patinary.bench;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something mixed in one pot, or a cup poured from such a pot and mixed further. All volumes are in millilitres.
 *
 * @param number order on the entry, from 1
 * @param name what she calls it, or nothing
 * @param pouredFrom the number of the earlier pot of this entry that it was poured from, or null
 * @param poured how much was poured from there
 * @param water how much water went in; it costs nothing
 * @param made how much it was when it was mixed, with what was poured in
 * @param rest how much was left over
 * @param keptAs the supply that the leftover is from now on, or null where it was thrown away
 * @param useBy by when to use what was kept
 */
@Embeddable
public record Pot(
        @Column(name = "pot") int number,
        String name,
        @Column(name = "poured_from") @Nullable Integer pouredFrom,
        BigDecimal poured,
        BigDecimal water,
        BigDecimal made,
        BigDecimal rest,
        @Column(name = "kept_as") @Nullable UUID keptAs,
        @Column(name = "use_by") @Nullable LocalDate useBy) {

    /** What of it was put aside; what was thrown away stays with the pieces. */
    BigDecimal kept() {
        return keptAs == null ? BigDecimal.ZERO : rest;
    }
}
