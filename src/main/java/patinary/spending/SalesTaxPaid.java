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

/** Sales tax that was collected and is now paid over. */
@Entity
@Table(name = "sales_tax_paid")
@DiscriminatorValue("SALES_TAX_PAID")
public class SalesTaxPaid extends Document {

    private String period = "";

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected SalesTaxPaid() {}

    public SalesTaxPaid(UUID id, LocalDate date, String note, String period, UUID placeId, Amount amount) {
        super(id, DocumentKind.SALES_TAX_PAID, date, note);
        this.period = period;
        this.placeId = placeId;
        this.amount = amount;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, String period, UUID placeId, Amount amount) {
        redate(date, note);
        this.period = period;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.SALES_TAX_DUE, Tags.NONE, amount),
                new Move.Post(Account.MONEY, Tags.place(placeId), amount.negated()));
    }

    public String period() {
        return period;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
