package patinary.buying;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/** Things that went back to where they were bought, for money, less to pay, or store credit. */
@Entity
@Table(name = "supplier_return")
@DiscriminatorValue("SUPPLIER_RETURN")
public class SupplierReturn extends Document {

    /** The category under which write-offs show what a return lost or won. */
    static final String CATEGORY = "returned";

    /**
     * Everything such a return says.
     *
     * @param receiptId the receipt, or the opening, on which less is owed, where the way is {@link Way#OWED}
     * @param amount what she got back for all of it
     */
    public record Content(
            LocalDate date,
            String note,
            @Nullable UUID sourceId,
            Way way,
            @Nullable UUID placeId,
            @Nullable UUID receiptId,
            Amount amount,
            List<UUID> pieces,
            List<ReturnedSupply> supplies) {}

    /** A supply that went back; the quantity is in its base unit. */
    @Embeddable
    public record ReturnedSupply(
            int line,
            UUID supplyId,
            @Enumerated(EnumType.STRING) StockPlace place,
            BigDecimal quantity) {}

    private @Nullable UUID sourceId;

    @Enumerated(EnumType.STRING)
    private Way way = Way.PLACE;

    private @Nullable UUID placeId;

    private @Nullable UUID receiptId;

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    @ElementCollection
    @CollectionTable(name = "supplier_return_piece", joinColumns = @JoinColumn(name = "supplier_return_id"))
    @Column(name = "piece_id")
    private List<UUID> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "supplier_return_supply", joinColumns = @JoinColumn(name = "supplier_return_id"))
    @OrderBy("line")
    private List<ReturnedSupply> supplies = new ArrayList<>();

    protected SupplierReturn() {}

    public SupplierReturn(UUID id, Content content) {
        super(id, DocumentKind.SUPPLIER_RETURN, content.date(), content.note());
        rewrite(content);
    }

    final void rewrite(Content content) {
        redate(content.date(), content.note());
        sourceId = content.sourceId();
        way = content.way();
        placeId = content.placeId();
        receiptId = content.receiptId();
        amount = content.amount();
        replace(pieces, content.pieces());
        replace(supplies, content.supplies());
    }

    public Content content() {
        return new Content(
                date(), note(), sourceId, way, placeId, receiptId, amount, List.copyOf(pieces), List.copyOf(supplies));
    }

    /** The landed cost leaves to write-offs, which the amount given back then makes good. */
    @Override
    public List<Move> moves() {
        Tags tags = Tags.category(CATEGORY);
        List<Move> moves = new ArrayList<>();
        pieces.stream().sorted().forEach(piece -> moves.add(new Move.PieceOut(piece, Account.WRITE_OFFS, CATEGORY)));
        supplies.forEach(supply -> moves.add(new Move.SupplyOut(
                supply.supplyId(),
                supply.place(),
                supply.quantity(),
                false,
                new Move.Destination.To(Account.WRITE_OFFS, tags))));
        moves.add(new Move.Post(Account.WRITE_OFFS, tags, amount.negated()));
        moves.add(gotBack());
        return moves;
    }

    /** Less to pay belongs to the receipt that it is owed for: what is owed is told receipt by receipt. */
    private Move gotBack() {
        return way == Way.OWED
                ? new Move.Post(Account.PAYABLE, Tags.origin(receiptId), amount)
                : new Tender(1, way, placeId, amount.negated()).paidOut(sourceId);
    }
}
