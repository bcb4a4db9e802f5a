package patinary.selling;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
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
import patinary.ledger.Way;
import patinary.money.Amount;

/** Money given back to a buyer, with or without the thing coming back. */
@Entity
@Table(name = "refund")
@DiscriminatorValue("REFUND")
public class Refund extends Document {

    private UUID saleId = new UUID(0, 0);

    @Enumerated(EnumType.STRING)
    private Way way = Way.PLACE;

    private @Nullable UUID placeId;

    @Column(name = "shipping_minor")
    private Amount shipping = Amount.ZERO;

    @Column(name = "tax_minor")
    private Amount tax = Amount.ZERO;

    @Column(name = "fee_back_minor")
    private Amount feeBack = Amount.ZERO;

    private @Nullable UUID feePlaceId;

    @ElementCollection
    @CollectionTable(name = "refund_line", joinColumns = @JoinColumn(name = "refund_id"))
    @OrderBy("line")
    private List<RefundLine> lines = new ArrayList<>();

    protected Refund() {}

    public Refund(UUID id, RefundContent content) {
        super(id, DocumentKind.REFUND, content.date(), content.note());
        saleId = content.saleId();
        way = content.way();
        placeId = content.placeId();
        shipping = content.shipping();
        tax = content.tax();
        feeBack = content.feeBack();
        feePlaceId = content.feePlaceId();
        replace(lines, content.lines());
    }

    @Override
    public List<Move> moves() {
        return RefundPosting.moves(content());
    }

    public RefundContent content() {
        return new RefundContent(
                date(), note(), saleId, way, placeId, shipping, tax, feeBack, feePlaceId, List.copyOf(lines));
    }
}
