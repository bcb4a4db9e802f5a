package patinary.opening;

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
import patinary.money.Amount;

/** What was there on the first day: pieces, part-used containers, money, amounts owed either way. */
@Entity
@Table(name = "opening")
@DiscriminatorValue("OPENING")
public class Opening extends Document {

    /** A piece on the shelf; where its cost is not known it stands at the given amount, marked as estimated. */
    @Embeddable
    public record OpeningPiece(
            UUID pieceId, @Column(name = "cost_minor") Amount cost, boolean known) {}

    /** What was left of a supply, in its base unit, and what that is worth at cost. */
    @Embeddable
    public record OpeningSupply(
            int line,
            UUID supplyId,
            @Enumerated(EnumType.STRING) StockPlace place,
            BigDecimal quantity,
            @Column(name = "cost_minor") Amount cost,
            boolean about) {}

    /** Money there, or an amount owed: above zero means there is or is owed so much, on either side. */
    @Embeddable
    public record OpeningBalance(
            int line,
            @Enumerated(EnumType.STRING) Account account,
            @Nullable UUID placeId,
            @Nullable UUID partyId,
            String title,
            @Column(name = "amount_minor") Amount amount) {

        Amount signed() {
            return switch (account) {
                case PAYABLE, CUSTOMER_DEPOSITS, STORE_CREDIT_GIVEN, SALES_TAX_DUE -> amount.negated();
                default -> amount;
            };
        }
    }

    /**
     * Everything the opening says.
     *
     * @param odometer what the car's counter showed
     * @param lastClosing stock at the end of last year by the records before these, to be held against the sum here
     */
    public record Content(
            LocalDate date,
            String note,
            @Nullable BigDecimal odometer,
            @Nullable Amount lastClosing,
            List<OpeningPiece> pieces,
            List<OpeningSupply> supplies,
            List<OpeningBalance> balances) {}

    /** The one opening of a shop: a second one cannot come into being beside it. */
    static final UUID ONLY = UUID.fromString("6f70656e-696e-4700-8000-000000000001");

    private @Nullable BigDecimal odometer;

    @Column(name = "last_closing_minor")
    private @Nullable Amount lastClosing;

    @ElementCollection
    @CollectionTable(name = "opening_piece", joinColumns = @JoinColumn(name = "opening_id"))
    private List<OpeningPiece> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "opening_supply", joinColumns = @JoinColumn(name = "opening_id"))
    @OrderBy("line")
    private List<OpeningSupply> supplies = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "opening_balance", joinColumns = @JoinColumn(name = "opening_id"))
    @OrderBy("line")
    private List<OpeningBalance> balances = new ArrayList<>();

    protected Opening() {}

    public Opening(UUID id, Content content) {
        super(id, DocumentKind.OPENING, content.date(), content.note());
        rewrite(content);
    }

    /** Replaces everything but the id. */
    public final void rewrite(Content content) {
        redate(content.date(), content.note());
        odometer = content.odometer();
        lastClosing = content.lastClosing();
        replace(pieces, content.pieces());
        replace(supplies, content.supplies());
        replace(balances, content.balances());
    }

    @Override
    public List<Move> moves() {
        List<Move> moves = new ArrayList<>();
        pieces.stream()
                .sorted(java.util.Comparator.comparing(piece -> piece.pieceId().toString()))
                .forEach(piece -> moves.addAll(piece(piece)));
        supplies.forEach(supply -> moves.addAll(supply(supply)));
        balances.forEach(balance -> moves.addAll(balance(balance)));
        return moves;
    }

    public Content content() {
        return new Content(
                date(),
                note(),
                odometer,
                lastClosing,
                List.copyOf(pieces),
                List.copyOf(supplies),
                List.copyOf(balances));
    }

    private static List<Move> piece(OpeningPiece piece) {
        return List.of(
                new Move.PieceIn(piece.pieceId(), piece.cost(), !piece.known()), opening("pieces", piece.cost()));
    }

    private static List<Move> supply(OpeningSupply supply) {
        return List.of(
                new Move.SupplyIn(supply.supplyId(), supply.place(), supply.quantity(), supply.cost(), supply.about()),
                opening(supply.place() == StockPlace.BENCH ? "bench" : "shelf", supply.cost()));
    }

    private static List<Move> balance(OpeningBalance balance) {
        Tags tags = new Tags(balance.placeId(), null, null, null, balance.partyId(), null, false);
        return List.of(new Move.Post(balance.account(), tags, balance.signed()), opening("balance", balance.signed()));
    }

    private static Move opening(String category, Amount amount) {
        return new Move.Post(Account.OPENING, Tags.category(category), amount.negated());
    }
}
