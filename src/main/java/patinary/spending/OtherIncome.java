package patinary.spending;

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

/** Income that is no sale, for instance from lessons. */
@Entity
@Table(name = "other_income")
@DiscriminatorValue("OTHER_INCOME")
public class OtherIncome extends Document {

    /** The category of fees that are kept of other income. */
    static final String INCOME = "income";

    private String category = "";

    private String payer = "";

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    /** Null for income from before this was asked. */
    @Column(name = "fee_minor")
    private @Nullable Amount fee = Amount.ZERO;

    protected OtherIncome() {}

    public OtherIncome(
            UUID id, LocalDate date, String note, String category, String payer, UUID placeId, Amount amount) {
        super(id, DocumentKind.OTHER_INCOME, date, note);
        this.category = category;
        this.payer = payer;
        this.placeId = placeId;
        this.amount = amount;
    }

    /** Income of which the payer kept a part: the amount is what it came to before. */
    public OtherIncome keeping(Amount kept) {
        fee = kept;
        return this;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, String category, String payer, UUID placeId, Amount amount) {
        redate(date, note);
        this.category = category;
        this.payer = payer;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(Account.MONEY, Tags.place(placeId), amount.minus(fee())),
                new Move.Post(Account.FEES, Tags.category(INCOME), fee()),
                new Move.Post(Account.OTHER_INCOME, Tags.category(category), amount.negated()));
    }

    /** What the payer kept. */
    public Amount fee() {
        return fee == null ? Amount.ZERO : fee;
    }

    public String category() {
        return category;
    }

    public String payer() {
        return payer;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
