package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What was given back for one thing.
 *
 * @param line order on the refund, from 1
 * @param pieceId the piece, or null for a retail supply
 * @param supplyId the retail supply, or null for a piece
 * @param quantity of the supply, in its base unit
 * @param amount given back, without tax
 * @param comesBack whether the thing itself came back into stock
 * @param lost whether it was sent back and cannot be sold again, so that its cost stays an expense; null as no
 * @param owner what its owner is no longer owed, where a piece that is not hers came back
 */
@Embeddable
public record RefundLine(
        int line,
        @Nullable UUID pieceId,
        @Nullable UUID supplyId,
        @Nullable BigDecimal quantity,
        @Column(name = "amount_minor") Amount amount,
        boolean comesBack,
        @Nullable Boolean lost,
        @Column(name = "owner_minor") @Nullable Amount owner) {

    /** Something of her own. */
    public RefundLine(
            int line,
            @Nullable UUID pieceId,
            @Nullable UUID supplyId,
            @Nullable BigDecimal quantity,
            Amount amount,
            boolean comesBack,
            @Nullable Boolean lost) {
        this(line, pieceId, supplyId, quantity, amount, comesBack, lost, null);
    }

    /** What came back into stock, or stayed with the buyer. */
    public RefundLine(
            int line,
            @Nullable UUID pieceId,
            @Nullable UUID supplyId,
            @Nullable BigDecimal quantity,
            Amount amount,
            boolean comesBack) {
        this(line, pieceId, supplyId, quantity, amount, comesBack, false, null);
    }

    /** The same, and what its owner is no longer owed. */
    public RefundLine noLongerOwing(@Nullable Amount share) {
        return new RefundLine(line, pieceId, supplyId, quantity, amount, comesBack, lost, share);
    }

    public boolean isLost() {
        return Boolean.TRUE.equals(lost);
    }
}
