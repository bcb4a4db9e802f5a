package patinary.pieces;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Shape;

/**
 * One thing to be sold. It says what the thing is; where it stands between found and sold is derived from the documents
 * that name it and never stored.
 */
@Entity
@Table(name = "piece")
public class Piece {

    /**
     * What is known of a piece.
     *
     * @param code the short code on its label
     * @param area surface to be finished, in square centimetres
     * @param place shelf, box or stall
     */
    public record Facts(
            String code,
            String title,
            @Nullable UUID kindId,
            @Nullable UUID styleId,
            String material,
            @Nullable BigDecimal area,
            String place,
            String note,
            List<String> tags) {}

    @Id
    private UUID id = new UUID(0, 0);

    private String code = "";
    private String title = "";
    private @Nullable UUID kindId;
    private @Nullable UUID styleId;
    private String material = "";

    @Column(name = "area_cm2")
    private @Nullable BigDecimal area;

    private String place = "";
    private String note = "";

    @ElementCollection
    @CollectionTable(name = "piece_tag", joinColumns = @JoinColumn(name = "piece_id"))
    @Column(name = "tag")
    private Set<String> tags = new TreeSet<>();

    private @Nullable UUID plannedFinishId;
    private @Nullable String shape;
    private @Nullable String shapeMeasures;

    @Version
    private long version;

    protected Piece() {}

    public Piece(UUID id, Facts facts) {
        this.id = id;
        rewrite(facts);
    }

    /** Replaces everything but the id. */
    public final void rewrite(Facts facts) {
        code = facts.code();
        title = facts.title();
        kindId = facts.kindId();
        styleId = facts.styleId();
        material = facts.material();
        area = facts.area();
        place = facts.place();
        note = facts.note();
        Collection<String> copy = List.copyOf(facts.tags());
        tags.clear();
        tags.addAll(copy);
    }

    /**
     * Says what is to be done with it and how its surface was measured.
     *
     * @param finishId the finish it waits for, or null
     * @param newShape with its measures as typed; null where the surface itself was typed, or is not known
     */
    void plan(@Nullable UUID finishId, @Nullable MeasuredShape newShape) {
        plannedFinishId = finishId;
        shape = newShape == null ? null : newShape.shape().name();
        shapeMeasures = newShape == null ? null : newShape.measures();
    }

    @Nullable
    UUID plannedFinishId() {
        return plannedFinishId;
    }

    @Nullable
    MeasuredShape measuredShape() {
        return shape == null || shapeMeasures == null ? null : new MeasuredShape(Shape.valueOf(shape), shapeMeasures);
    }

    public UUID id() {
        return id;
    }

    public Facts facts() {
        return new Facts(
                code,
                title,
                kindId,
                styleId,
                material,
                area,
                place,
                note,
                tags.stream().sorted().toList());
    }

    public long version() {
        return version;
    }
}
