package patinary.spending;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** Money carried from one place to another, for instance from the cash box to the bank. */
@Entity
@Table(name = "money_move")
@DiscriminatorValue("MONEY_MOVE")
public class MoneyMove extends Document {

    private UUID fromPlaceId = new UUID(0, 0);

    private UUID toPlaceId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected MoneyMove() {}

    public MoneyMove(UUID id, LocalDate date, String note, UUID fromPlaceId, UUID toPlaceId, Amount amount) {
        super(id, DocumentKind.MONEY_MOVE, date, note);
        this.fromPlaceId = fromPlaceId;
        this.toPlaceId = toPlaceId;
        this.amount = amount;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID fromPlaceId, UUID toPlaceId, Amount amount) {
        redate(date, note);
        this.fromPlaceId = fromPlaceId;
        this.toPlaceId = toPlaceId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.MONEY, Tags.place(toPlaceId), amount),
                new Move.Post(Account.MONEY, Tags.place(fromPlaceId), amount.negated()));
    }

    public UUID fromPlaceId() {
        return fromPlaceId;
    }

    public UUID toPlaceId() {
        return toPlaceId;
    }

    public Amount amount() {
        return amount;
    }
}
