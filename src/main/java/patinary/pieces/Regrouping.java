package patinary.pieces;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.PieceShare;

/** Parts joined into a piece, or a piece split into several: landed cost is shared anew and none is lost. */
@Entity
@Table(name = "regrouping")
@DiscriminatorValue("REGROUPING")
public class Regrouping extends Document {

    /** A piece that comes out, with its weight in the cost that went in. */
    @Embeddable
    public record Part(UUID pieceId, BigDecimal weight) {}

    @ElementCollection
    @CollectionTable(name = "regrouping_from", joinColumns = @JoinColumn(name = "regrouping_id"))
    @Column(name = "piece_id")
    private List<UUID> from = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "regrouping_to", joinColumns = @JoinColumn(name = "regrouping_id"))
    private List<Part> to = new ArrayList<>();

    protected Regrouping() {}

    public Regrouping(UUID id, LocalDate date, String note, List<UUID> from, List<Part> to) {
        super(id, DocumentKind.REGROUPING, date, note);
        replace(this.from, from);
        replace(this.to, to);
    }

    @Override
    public List<Move> moves() {
        return List.of(new Move.Regroup(
                from.stream().sorted().toList(),
                to.stream()
                        .map(part -> new PieceShare(part.pieceId(), part.weight()))
                        .toList()));
    }

    public List<UUID> from() {
        return List.copyOf(from);
    }

    public List<Part> to() {
        return List.copyOf(to);
    }
}
