package patinary.selling;

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

/** Carriage and packing, for a sale or without one; back where the buyer returned something. */
@Entity
@Table(name = "postage")
@DiscriminatorValue("POSTAGE")
public class Postage extends Document {

    private @Nullable UUID saleId;

    private UUID placeId = new UUID(0, 0);

    @Column(name = "carriage_minor")
    private Amount carriage = Amount.ZERO;

    @Column(name = "packing_minor")
    private Amount packing = Amount.ZERO;

    private boolean back;

    protected Postage() {}

    public Postage(
            UUID id,
            LocalDate date,
            String note,
            @Nullable UUID saleId,
            UUID placeId,
            Amount carriage,
            Amount packing,
            boolean back) {
        super(id, DocumentKind.POSTAGE, date, note);
        this.saleId = saleId;
        this.placeId = placeId;
        this.carriage = carriage;
        this.packing = packing;
        this.back = back;
    }

    /** Replaces everything but the id. */
    public void rewrite(
            LocalDate date,
            String note,
            @Nullable UUID saleId,
            UUID placeId,
            Amount carriage,
            Amount packing,
            boolean back) {
        redate(date, note);
        this.saleId = saleId;
        this.placeId = placeId;
        this.carriage = carriage;
        this.packing = packing;
        this.back = back;
    }

    @Override
    public List<Move> moves() {
        Tags sale = Tags.origin(saleId);
        return List.of(
                new Move.Post(Account.POSTAGE, sale.withCategory(back ? "carriage-back" : "carriage"), carriage),
                new Move.Post(Account.POSTAGE, sale.withCategory("packing"), packing),
                new Move.Post(
                        Account.MONEY,
                        Tags.place(placeId),
                        carriage.plus(packing).negated()));
    }

    public @Nullable UUID saleId() {
        return saleId;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount carriage() {
        return carriage;
    }

    public Amount packing() {
        return packing;
    }

    public boolean back() {
        return back;
    }
}
