package patinary.selling;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.money.Amount;

/** A piece, or a set of pieces, put up for sale on a day. It moves no money: no amount of it reaches the books. */
@Entity
@Table(name = "offer")
@DiscriminatorValue("OFFER")
public class Offer extends Document {

    /** A piece of the offer with its weight in the price; several pieces are a set. */
    @Embeddable
    public record OfferedPiece(UUID pieceId, BigDecimal weight) {}

    /** The asked price from a day on. */
    @Embeddable
    public record Price(
            LocalDate validFrom,
            @Column(name = "price_minor") Amount price) {}

    /** Days on which it was not to be had, both counted; without an end where it still is not. */
    @Embeddable
    public record Pause(LocalDate pausedFrom, @Nullable LocalDate pausedTo) {}

    /**
     * Everything an offer says.
     *
     * @param date the first day on offer
     * @param endedOn the last day before it was withdrawn, or null
     * @param alikeId what the offers of several like pieces that were put up together have in common, or null
     */
    public record Content(
            LocalDate date,
            String note,
            String title,
            @Nullable UUID alikeId,
            @Nullable LocalDate endedOn,
            List<OfferedPiece> pieces,
            List<UUID> channels,
            List<Price> prices,
            List<Pause> pauses) {

        /** The price that was asked last. */
        public Amount lastPrice() {
            return prices.get(prices.size() - 1).price();
        }
    }

    private String title = "";
    private @Nullable UUID alikeId;
    private @Nullable LocalDate endedOn;

    @ElementCollection
    @CollectionTable(name = "offer_piece", joinColumns = @JoinColumn(name = "offer_id"))
    private List<OfferedPiece> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "offer_channel", joinColumns = @JoinColumn(name = "offer_id"))
    @Column(name = "channel_id")
    private List<UUID> channels = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "offer_price", joinColumns = @JoinColumn(name = "offer_id"))
    @OrderBy("validFrom")
    private List<Price> prices = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "offer_pause", joinColumns = @JoinColumn(name = "offer_id"))
    @OrderBy("pausedFrom")
    private List<Pause> pauses = new ArrayList<>();

    protected Offer() {}

    public Offer(UUID id, Content content) {
        super(id, DocumentKind.OFFER, content.date(), content.note());
        rewrite(content);
    }

    /** Replaces everything but the id. */
    final void rewrite(Content content) {
        redate(content.date(), content.note());
        title = content.title();
        alikeId = content.alikeId();
        endedOn = content.endedOn();
        replace(pieces, content.pieces());
        replace(channels, content.channels());
        replace(prices, content.prices());
        replace(pauses, content.pauses());
    }

    /** Becomes one of a group of like offers. */
    void joins(UUID group) {
        alikeId = group;
    }

    @Override
    public List<Move> moves() {
        return List.of();
    }

    public Content content() {
        return new Content(
                date(),
                note(),
                title,
                alikeId,
                endedOn,
                List.copyOf(pieces),
                List.copyOf(channels),
                List.copyOf(prices),
                List.copyOf(pauses));
    }
}
