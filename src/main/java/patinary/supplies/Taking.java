package patinary.supplies;

import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;

/** A supply taken from the retail shelf for her own bench, at cost. */
@Entity
@Table(name = "taking")
@DiscriminatorValue("TAKING")
public class Taking extends Document {

    private UUID supplyId = new UUID(0, 0);

    private BigDecimal quantity = BigDecimal.ZERO;

    private boolean ownUseTax;

    protected Taking() {}

    public Taking(UUID id, LocalDate date, String note, UUID supplyId, BigDecimal quantity, boolean ownUseTax) {
        super(id, DocumentKind.TAKING, date, note);
        this.supplyId = supplyId;
        this.quantity = quantity;
        this.ownUseTax = ownUseTax;
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
        return List.of(new Move.SupplyOut(
                supplyId, StockPlace.SHELF, quantity, false, new Move.Destination.Place(StockPlace.BENCH)));
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
