package patinary.buying;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tender;
import patinary.money.Amount;

/** What was bought at one till on one day. */
@Entity
@Table(name = "receipt")
@DiscriminatorValue("RECEIPT")
public class Receipt extends Document {

    private @Nullable UUID sourceId;
    private @Nullable UUID tripId;

    @Column(name = "till_total_minor")
    private Amount tillTotal = Amount.ZERO;

    @ElementCollection
    @CollectionTable(name = "receipt_line", joinColumns = @JoinColumn(name = "receipt_id"))
    @OrderBy("line")
    private List<ReceiptLine> lines = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "receipt_piece", joinColumns = @JoinColumn(name = "receipt_id"))
    @OrderBy("line, pieceId")
    private List<ReceiptPiece> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "receipt_charge", joinColumns = @JoinColumn(name = "receipt_id"))
    @OrderBy("line")
    private List<ReceiptCharge> charges = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "receipt_charge_line", joinColumns = @JoinColumn(name = "receipt_id"))
    @OrderBy("charge, line")
    private List<ChargeLine> chargeLines = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "receipt_payment", joinColumns = @JoinColumn(name = "receipt_id"))
    @OrderBy("line")
    private List<Tender> payments = new ArrayList<>();

    protected Receipt() {}

    public Receipt(UUID id, ReceiptContent content) {
        super(id, DocumentKind.RECEIPT, content.date(), content.note());
        fill(content);
    }

    /** Replaces everything but the id. */
    void rewrite(ReceiptContent content) {
        redate(content.date(), content.note());
        fill(content);
    }

    @Override
    public List<Move> moves() {
        return ReceiptPosting.moves(content());
    }

    public ReceiptContent content() {
        return new ReceiptContent(
                date(), note(), sourceId, tripId, tillTotal, lines, pieces, charges, chargeLines, payments);
    }

    private void fill(ReceiptContent content) {
        sourceId = content.sourceId();
        tripId = content.tripId();
        tillTotal = content.tillTotal();
        replace(lines, content.lines());
        replace(pieces, content.pieces());
        replace(charges, content.charges());
        replace(chargeLines, content.chargeLines());
        replace(payments, content.payments());
    }
}
