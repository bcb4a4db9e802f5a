package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** Money from a buyer: for a sale that is owed, for what was owed on the first day, or ahead of a sale. */
@Entity
@Table(name = "payment")
@DiscriminatorValue("PAYMENT")
public class BuyerPayment extends Document {

    private @Nullable UUID saleId;

    private String buyer = "";

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected BuyerPayment() {}

    public BuyerPayment(
            UUID id, LocalDate date, String note, @Nullable UUID saleId, String buyer, UUID placeId, Amount amount) {
        super(id, DocumentKind.PAYMENT, date, note);
        this.saleId = saleId;
        this.buyer = buyer;
        this.placeId = placeId;
        this.amount = amount;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, @Nullable UUID saleId, String buyer, UUID placeId, Amount amount) {
        redate(date, note);
        this.saleId = saleId;
        this.buyer = buyer;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        Move other = saleId == null
                ? new Move.Post(Account.CUSTOMER_DEPOSITS, Tags.NONE, amount.negated())
                : new Move.Post(Account.RECEIVABLE, Tags.origin(saleId), amount.negated());
        return List.of(new Move.Post(Account.MONEY, Tags.place(placeId), amount), other);
    }

    /** The sale, or the opening for what was owed on the first day. */
    public @Nullable UUID saleId() {
        return saleId;
    }

    public String buyer() {
        return buyer;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
