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

/** Sales tax that was collected and is now paid over. */
@Entity
@Table(name = "sales_tax_paid")
@DiscriminatorValue("SALES_TAX_PAID")
public class SalesTaxPaid extends Document {

    /** The category of what a state lets her keep; an income of its own. */
    static final String ALLOWANCE = "sales tax allowance";

    /**
     * What a payment settles.
     *
     * @param taxPlaceId the place of sales tax, or null
     * @param from the first day that the return is for; null with {@code to}
     * @param to the last
     * @param allowance what the state lets her keep for collecting it: settled without being paid
     */
    public record Covered(
            @Nullable UUID taxPlaceId,
            @Nullable LocalDate from,
            @Nullable LocalDate to,
            Amount allowance) {
        public static final Covered NOT_SAID = new Covered(null, null, null, Amount.ZERO);
    }

    private String period = "";

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    private @Nullable UUID taxPlaceId;

    private @Nullable LocalDate coversFrom;

    private @Nullable LocalDate coversTo;

    @Column(name = "allowance_minor")
    private @Nullable Amount allowance;

    protected SalesTaxPaid() {}

    public SalesTaxPaid(UUID id, LocalDate date, String note, String period, UUID placeId, Amount amount) {
        this(id, date, note, period, placeId, amount, Covered.NOT_SAID);
    }

    public SalesTaxPaid(
            UUID id, LocalDate date, String note, String period, UUID placeId, Amount amount, Covered covered) {
        super(id, DocumentKind.SALES_TAX_PAID, date, note);
        this.period = period;
        this.placeId = placeId;
        this.amount = amount;
        cover(covered);
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, String period, UUID placeId, Amount amount, Covered covered) {
        redate(date, note);
        this.period = period;
        this.placeId = placeId;
        this.amount = amount;
        cover(covered);
    }

    private void cover(Covered covered) {
        taxPlaceId = covered.taxPlaceId();
        coversFrom = covered.from();
        coversTo = covered.to();
        allowance = covered.allowance().isZero() ? null : covered.allowance();
    }

    @Override
    public List<Move> moves() {
        return List.of(
                new Move.Post(
                        Account.SALES_TAX_DUE, Tags.NONE, amount.plus(covered().allowance())),
                new Move.Post(
                        Account.OTHER_INCOME,
                        Tags.category(ALLOWANCE),
                        covered().allowance().negated()),
                new Move.Post(Account.MONEY, Tags.place(placeId), amount.negated()));
    }

    public Covered covered() {
        return new Covered(taxPlaceId, coversFrom, coversTo, allowance == null ? Amount.ZERO : allowance);
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
