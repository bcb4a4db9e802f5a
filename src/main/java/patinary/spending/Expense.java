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

/** A cost of the shop that stays with no piece or supply. */
@Entity
@Table(name = "expense")
@DiscriminatorValue("EXPENSE")
public class Expense extends Document {

    private String category = "";

    private String payee = "";

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected Expense() {}

    public Expense(UUID id, LocalDate date, String note, String category, String payee, UUID placeId, Amount amount) {
        super(id, DocumentKind.EXPENSE, date, note);
        this.category = category;
        this.payee = payee;
        this.placeId = placeId;
        this.amount = amount;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, String category, String payee, UUID placeId, Amount amount) {
        redate(date, note);
        this.category = category;
        this.payee = payee;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.EXPENSE, Tags.category(category), amount),
                new Move.Post(Account.MONEY, Tags.place(placeId), amount.negated()));
    }

    public String category() {
        return category;
    }

    public String payee() {
        return payee;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
