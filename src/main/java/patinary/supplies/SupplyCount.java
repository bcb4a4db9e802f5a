package patinary.supplies;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;

/** There is this much left: settles what was really used. */
@Entity
@Table(name = "supply_count")
@DiscriminatorValue("COUNT")
public class SupplyCount extends Document {

    private UUID supplyId = new UUID(0, 0);

    @Enumerated(EnumType.STRING)
    private StockPlace place = StockPlace.BENCH;

    private BigDecimal quantity = BigDecimal.ZERO;

    /** Null for counts of an archive that did not know of it. */
    private @Nullable Boolean waste = false;

    @Column(name = "step_quantity")
    private @Nullable BigDecimal step;

    protected SupplyCount() {}

    public SupplyCount(UUID id, LocalDate date, String note, UUID supplyId, StockPlace place, BigDecimal quantity) {
        super(id, DocumentKind.COUNT, date, note);
        this.supplyId = supplyId;
        this.place = place;
        this.quantity = quantity;
    }

    /** What is missing at this count was spilt, dried up or lost: no use bears it. */
    public SupplyCount asWaste(boolean isWaste) {
        waste = isWaste;
        return this;
    }

    /** It was read off in steps of this quantity, a quarter of a jar for instance; null where it was measured. */
    public SupplyCount inStepsOf(@Nullable BigDecimal quantity) {
        step = quantity;
        return this;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID supplyId, StockPlace place, BigDecimal quantity) {
        redate(date, note);
        this.supplyId = supplyId;
        this.place = place;
        this.quantity = quantity;
    }

    @Override
    public List<Move> moves() {
        return List.of(new Move.Counted(supplyId, place, quantity, waste()));
    }

    public UUID supplyId() {
        return supplyId;
    }

    public StockPlace place() {
        return place;
    }

    public BigDecimal quantity() {
        return quantity;
    }

    public boolean waste() {
        return Boolean.TRUE.equals(waste);
    }

    public @Nullable BigDecimal step() {
        return step;
    }
}
