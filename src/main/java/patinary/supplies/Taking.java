package patinary.supplies;

import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;

/** A supply taken from the retail shelf for her own bench, at cost. */
@Entity
@Table(name = "taking")
@DiscriminatorValue("TAKING")
public class Taking extends Document {

    /** The expense category of small tools. */
    public static final String TOOLS = "small_tools";

    private UUID supplyId = new UUID(0, 0);

    private BigDecimal quantity = BigDecimal.ZERO;

    private boolean ownUseTax;

    /** Null for takings of an archive that did not know of it. */
    private @Nullable Boolean atOnce = false;

    protected Taking() {}

    public Taking(UUID id, LocalDate date, String note, UUID supplyId, BigDecimal quantity, boolean ownUseTax) {
        super(id, DocumentKind.TAKING, date, note);
        this.supplyId = supplyId;
        this.quantity = quantity;
        this.ownUseTax = ownUseTax;
    }

    /** A tool whose price is an expense at once: it does not reach the bench's stock. */
    public Taking asExpense(boolean isExpense) {
        atOnce = isExpense;
        return this;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID supplyId, BigDecimal quantity, boolean ownUseTax) {
        redate(date, note);
        this.supplyId = supplyId;
        this.quantity = quantity;
        this.ownUseTax = ownUseTax;
    }

    @Override
    public List<Move> moves() {
        Move.Destination to = atOnce()
                ? new Move.Destination.To(Account.EXPENSE, Tags.category(TOOLS))
                : new Move.Destination.Place(StockPlace.BENCH);
        return List.of(new Move.SupplyOut(supplyId, StockPlace.SHELF, quantity, false, to));
    }

    public boolean atOnce() {
        return Boolean.TRUE.equals(atOnce);
    }

    public UUID supplyId() {
        return supplyId;
    }

    public BigDecimal quantity() {
        return quantity;
    }

    public boolean ownUseTax() {
        return ownUseTax;
    }
}
