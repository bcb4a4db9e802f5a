package patinary.selling;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tender;
import patinary.money.Amount;

/** What a buyer bought on one day. */
@Entity
@Table(name = "sale")
@DiscriminatorValue("SALE")
public class Sale extends Document {

    private UUID channelId = new UUID(0, 0);
    private String buyer = "";
    private String orderReference = "";

    @Column(name = "discount_minor")
    private Amount discount = Amount.ZERO;

    @Column(name = "shipping_minor")
    private Amount shipping = Amount.ZERO;

    @Column(name = "tax_minor")
    private Amount tax = Amount.ZERO;

    private boolean taxPassed;
    private @Nullable UUID taxPlaceId;

    @Embedded
    private SaleExtras extras = SaleExtras.NONE;

    @Column(name = "fee_minor")
    private Amount fee = Amount.ZERO;

    private @Nullable UUID feePlaceId;
    private @Nullable LocalDate postedOn;

    @ElementCollection
    @CollectionTable(name = "sale_line", joinColumns = @JoinColumn(name = "sale_id"))
    @OrderBy("line")
    private List<SaleLine> lines = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "sale_piece", joinColumns = @JoinColumn(name = "sale_id"))
    private List<SalePiece> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "sale_undelivered", joinColumns = @JoinColumn(name = "sale_id"))
    private List<SalePiece> undelivered = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "sale_payment", joinColumns = @JoinColumn(name = "sale_id"))
    @OrderBy("line")
    private List<Tender> payments = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "sale_wrap", joinColumns = @JoinColumn(name = "sale_id"))
    @OrderBy("line")
    private List<Wrap> wraps = new ArrayList<>();

    protected Sale() {}

    public Sale(UUID id, SaleContent content) {
        super(id, DocumentKind.SALE, content.date(), content.note());
        fill(content);
    }

    /** Replaces everything but the id. */
    void rewrite(SaleContent content) {
        redate(content.date(), content.note());
        fill(content);
    }

    /** Says what it was packed in, and nothing else. */
    void packed(List<Wrap> in) {
        replace(wraps, in);
    }

    /** Marks the day on which it was sent off, or that it was not. */
    public void posted(@Nullable LocalDate day) {
        postedOn = day;
    }

    @Override
    public List<Move> moves() {
        return SalePosting.moves(content());
    }

    public SaleContent content() {
        return new SaleContent(
                date(),
                note(),
                channelId,
                buyer,
                orderReference,
                discount,
                shipping,
                tax,
                taxPassed,
                taxPlaceId,
                fee,
                feePlaceId,
                postedOn,
                List.copyOf(lines),
                List.copyOf(pieces),
                List.copyOf(payments),
                List.copyOf(wraps),
                extras,
                List.copyOf(undelivered));
    }

    private void fill(SaleContent content) {
        channelId = content.channelId();
        buyer = content.buyer();
        orderReference = content.orderReference();
        discount = content.discount();
        shipping = content.shipping();
        tax = content.tax();
        taxPassed = content.taxPassed();
        taxPlaceId = content.taxPlaceId();
        extras = content.extras();
        fee = content.fee();
        feePlaceId = content.feePlaceId();
        postedOn = content.postedOn();
        replace(lines, content.lines());
        replace(pieces, content.pieces());
        replace(undelivered, content.undelivered());
        replace(payments, content.payments());
        replace(wraps, content.wraps());
    }
}
