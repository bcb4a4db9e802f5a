package patinary.arrangements;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** A supply that came free, from its maker for instance: docs/handbook/posting-rules-arrangements.md. */
@Entity
@Table(name = "supply_gift")
@DiscriminatorValue("SUPPLY_GIFT")
public class SupplyGift extends Document {

    /** The category of other income that came as things. */
    static final String IN_KIND = "in kind";

    private String giver = "";
    private UUID supplyId = new UUID(0, 0);
    private BigDecimal quantity = BigDecimal.ONE;

    @Column(name = "value_minor")
    private Amount value = Amount.ZERO;

    private boolean forWork;

    protected SupplyGift() {}

    /**
     * A supply that came free.
     *
     * @param quantity in the supply's base unit, above zero
     * @param value what it would have cost her to buy
     * @param forWork whether it was for work done, so that its value is income and then its cost
     */
    public SupplyGift(
            UUID id,
            LocalDate date,
            String note,
            String giver,
            UUID supplyId,
            BigDecimal quantity,
            Amount value,
            boolean forWork) {
        super(id, DocumentKind.SUPPLY_GIFT, date, note);
        this.giver = giver;
        this.supplyId = supplyId;
        this.quantity = quantity;
        this.value = value;
        this.forWork = forWork;
    }

    /** It lies on the bench at its cost: nothing, or what it stands for as income. */
    @Override
    public List<Move> moves() {
        Amount cost = forWork ? value : Amount.ZERO;
        return List.of(
                new Move.SupplyIn(supplyId, StockPlace.BENCH, quantity, cost, false),
                new Move.Post(Account.OTHER_INCOME, Tags.category(IN_KIND), cost.negated()));
    }

    public String giver() {
        return giver;
    }

    public UUID supplyId() {
        return supplyId;
    }

    public BigDecimal quantity() {
        return quantity;
    }

    public Amount value() {
        return value;
    }

    public boolean forWork() {
        return forWork;
    }
}
