package patinary.buying;

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

/** What was owed for a receipt, or since the first day, is paid. */
@Entity
@Table(name = "bill_paid")
@DiscriminatorValue("BILL_PAID")
public class BillPaid extends Document {

    private @Nullable UUID receiptId;
    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected BillPaid() {}

    public BillPaid(UUID id, LocalDate date, String note, @Nullable UUID receiptId, UUID placeId, Amount amount) {
        super(id, DocumentKind.BILL_PAID, date, note);
        this.receiptId = receiptId;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.PAYABLE, Tags.origin(receiptId), amount),
                new Move.Post(Account.MONEY, Tags.place(placeId), amount.negated()));
    }

    /** The receipt, or the opening for what was owed on the first day. */
    public @Nullable UUID receiptId() {
        return receiptId;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
