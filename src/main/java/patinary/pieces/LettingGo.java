package patinary.pieces;

import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;

/** A piece that leaves without a sale. */
@Entity
@Table(name = "letting_go")
@DiscriminatorValue("LETTING_GO")
public class LettingGo extends Document {

    /** Why it left. A gift is own use: it left the shop for private reasons. */
    public enum Reason {
        BROKEN,
        GIVEN_AWAY,
        KEPT,
        /** A piece that is not hers went back; what was used on it is a loss. */
        TO_OWNER;

        private boolean isLoss() {
            return this == BROKEN || this == TO_OWNER;
        }
    }

    private UUID pieceId = new UUID(0, 0);

    @Enumerated(EnumType.STRING)
    private Reason reason = Reason.BROKEN;

    protected LettingGo() {}

    public LettingGo(UUID id, LocalDate date, String note, UUID pieceId, Reason reason) {
        super(id, DocumentKind.LETTING_GO, date, note);
        this.pieceId = pieceId;
        this.reason = reason;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID pieceId, Reason reason) {
        redate(date, note);
        this.pieceId = pieceId;
        this.reason = reason;
    }

    @Override
    public List<Move> moves() {
        return List.of(new Move.PieceOut(pieceId, reason.isLoss() ? Account.WRITE_OFFS : Account.OWN_USE));
    }

    public UUID pieceId() {
        return pieceId;
    }

    public Reason reason() {
        return reason;
    }
}
