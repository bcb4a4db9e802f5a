package patinary.spending;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.money.Amount;

/**
 * How much money was in a cash box when a day was over. Only that is a fact; what was short or over follows from the
 * other documents and changes with them.
 */
@Entity
@Table(name = "till_count")
@DiscriminatorValue("TILL_COUNT")
public class TillCount extends Document {

    private UUID placeId = new UUID(0, 0);

    @Column(name = "counted_minor")
    private Amount counted = Amount.ZERO;

    protected TillCount() {}

    public TillCount(UUID id, LocalDate date, String note, UUID placeId, Amount counted) {
        super(id, DocumentKind.TILL_COUNT, date, note);
        this.placeId = placeId;
        this.counted = counted;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, UUID placeId, Amount counted) {
        redate(date, note);
        this.placeId = placeId;
        this.counted = counted;
    }

    @Override
    public List<Move> moves() {
        return List.of(new Move.MoneyCounted(placeId, counted));
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount counted() {
        return counted;
    }
}
