package patinary.selling;

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

/** What a channel paid out of its balance, less what it kept. */
@Entity
@Table(name = "payout")
@DiscriminatorValue("PAYOUT")
public class Payout extends Document {

    private UUID fromPlaceId = new UUID(0, 0);

    private UUID toPlaceId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    @Column(name = "fee_minor")
    private Amount fee = Amount.ZERO;

    protected Payout() {}

    public Payout(UUID id, LocalDate date, String note, UUID fromPlaceId, UUID toPlaceId, Amount amount, Amount fee) {
        super(id, DocumentKind.PAYOUT, date, note);
        this.fromPlaceId = fromPlaceId;
        this.toPlaceId = toPlaceId;
        this.amount = amount;
        this.fee = fee;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID fromPlaceId, UUID toPlaceId, Amount amount, Amount fee) {
        redate(date, note);
        this.fromPlaceId = fromPlaceId;
        this.toPlaceId = toPlaceId;
        this.amount = amount;
        this.fee = fee;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.MONEY, Tags.place(toPlaceId), amount),
                new Move.Post(Account.FEES, Tags.category("payout"), fee),
                new Move.Post(
                        Account.MONEY, Tags.place(fromPlaceId), amount.plus(fee).negated()));
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

    public Amount fee() {
        return fee;
    }
}
