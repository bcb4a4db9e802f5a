package patinary.supplies;

import jakarta.persistence.AttributeOverride;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.PrimaryKeyJoinColumn;
import jakarta.persistence.SecondaryTable;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.money.Amount;

/** One product that she works with or sells: bought by the container, used in its own unit. */
@Entity
@Table(name = "supply")
// Both have a row for a supply or none, and are read with it.
@SecondaryTable(name = "supply_sheet", pkJoinColumns = @PrimaryKeyJoinColumn(name = "supply_id"))
@SecondaryTable(name = "supply_limit", pkJoinColumns = @PrimaryKeyJoinColumn(name = "supply_id"))
public class Supply {

    /** A named quantity in the supply's base unit: a pack it is bought in, or her own measure of it. */
    @Embeddable
    public record Named(String name, BigDecimal quantity) {}

    /**
     * What is known of a supply.
     *
     * @param lineId its supply line
     * @param dimension what it is measured by; decides its base unit and never changes once there are documents
     * @param retailPrice asked for one pack from the retail shelf, or null where it is not sold
     * @param low the quantity, in its base unit, at which to re-order, or null
     * @param packs how it is bought
     * @param measures her own measures: a dab, a brush load
     * @param sheet the size of one sheet, or null where it does not come in sheets
     * @param motifs what may be cut out of a sheet by its name
     * @param limits what the label says
     * @param weighing what is known for counting it by weighing
     * @param wear how its price becomes a cost where it is a tool that wears, or null
     */
    public record Facts(
            UUID lineId,
            String name,
            Dimension dimension,
            @Nullable Amount retailPrice,
            @Nullable BigDecimal low,
            List<Named> packs,
            List<Named> measures,
            @Nullable SheetSize sheet,
            List<Motif> motifs,
            Limits limits,
            Weighing weighing,
            @Nullable Wear wear) {

        /** Facts of a supply that does not come in sheets. */
        public Facts(
                UUID lineId,
                String name,
                Dimension dimension,
                @Nullable Amount retailPrice,
                @Nullable BigDecimal low,
                List<Named> packs,
                List<Named> measures) {
            this(
                    lineId,
                    name,
                    dimension,
                    retailPrice,
                    low,
                    packs,
                    measures,
                    null,
                    List.of(),
                    Limits.NONE,
                    Weighing.UNKNOWN,
                    null);
        }

        /** The same with what is known of its sheets, and of its label. */
        public Facts with(@Nullable SheetSize size, List<Motif> printed, Limits said) {
            return new Facts(
                    lineId, name, dimension, retailPrice, low, packs, measures, size, printed, said, weighing, wear);
        }

        Facts inLine(UUID line) {
            return new Facts(
                    line, name, dimension, retailPrice, low, packs, measures, sheet, motifs, limits, weighing, wear);
        }

        Facts withMeasures(List<Named> others) {
            return new Facts(
                    lineId, name, dimension, retailPrice, low, packs, others, sheet, motifs, limits, weighing, wear);
        }

        /** The same as a tool; by use its measures say which part of one a use takes. */
        Facts asTool(@Nullable Wear how) {
            return new Facts(
                    lineId, name, dimension, retailPrice, low, packs, measures, sheet, motifs, limits, weighing, how);
        }
    }

    @Id
    private UUID id = new UUID(0, 0);

    @Column(name = "supply_line_id")
    private UUID lineId = new UUID(0, 0);

    private String name = "";

    @Enumerated(EnumType.STRING)
    private Dimension dimension = Dimension.COUNT;

    @Column(name = "retail_price_minor")
    private @Nullable Amount retailPrice;

    @Column(name = "low_quantity")
    private @Nullable BigDecimal low;

    @ElementCollection
    @CollectionTable(name = "supply_pack", joinColumns = @JoinColumn(name = "supply_id"))
    @OrderBy("quantity")
    private Set<Named> packs = new LinkedHashSet<>();

    @ElementCollection
    @CollectionTable(name = "supply_measure", joinColumns = @JoinColumn(name = "supply_id"))
    @OrderBy("name")
    private Set<Named> measures = new LinkedHashSet<>();

    /** Written by {@link MeasureChanges}. */
    @ElementCollection
    @CollectionTable(name = "supply_measure_change", joinColumns = @JoinColumn(name = "supply_id"))
    @OrderBy("fromDay, name")
    private Set<MeasureChange> changes = new LinkedHashSet<>();

    @Embedded
    @AttributeOverride(name = "width", column = @Column(name = "width_cm", table = "supply_sheet"))
    @AttributeOverride(name = "height", column = @Column(name = "height_cm", table = "supply_sheet"))
    private @Nullable SheetSize sheet;

    @ElementCollection
    @CollectionTable(name = "supply_motif", joinColumns = @JoinColumn(name = "supply_id"))
    @OrderBy("name")
    private Set<Motif> motifs = new LinkedHashSet<>();

    @Embedded
    @AttributeOverride(name = "daysOpened", column = @Column(name = "days_opened", table = "supply_limit"))
    @AttributeOverride(name = "daysMixed", column = @Column(name = "days_mixed", table = "supply_limit"))
    @AttributeOverride(name = "most", column = @Column(name = "most_percent", table = "supply_limit"))
    @AttributeOverride(name = "mostNote", column = @Column(name = "most_note", table = "supply_limit"))
    private @Nullable Limits limits;

    @Column(name = "empty_grams")
    private @Nullable BigDecimal emptyGrams;

    @Column(name = "grams_per_ml")
    private @Nullable BigDecimal gramsPerMl;

    @Enumerated(EnumType.STRING)
    private @Nullable Wear wear;

    @Version
    private long version;

    protected Supply() {}

    public Supply(UUID id, Facts facts) {
        this.id = id;
        rewrite(facts);
    }

    /** Replaces everything but the id. */
    public final void rewrite(Facts facts) {
        lineId = facts.lineId();
        name = facts.name();
        dimension = facts.dimension();
        retailPrice = facts.retailPrice();
        low = facts.low();
        replace(packs, facts.packs());
        replace(measures, facts.measures());
        sheet = facts.sheet();
        replace(motifs, facts.motifs());
        limits = facts.limits().isNothing() ? null : facts.limits();
        emptyGrams = facts.weighing().emptyGrams();
        gramsPerMl = facts.weighing().gramsPerMl();
        wear = facts.wear();
    }

    /** A list that says the same is left alone, so that its rows are not written anew. */
    private static <T> void replace(Set<T> rows, List<T> by) {
        List<T> copy = List.copyOf(by);
        if (!List.copyOf(rows).equals(copy)) {
            rows.clear();
            rows.addAll(copy);
        }
    }

    public UUID id() {
        return id;
    }

    /** Its name, where the rest of the facts is not needed. */
    public String name() {
        return name;
    }

    /** Its packs, where the rest of the facts is not needed. */
    public List<Named> packs() {
        return List.copyOf(packs);
    }

    /** How her measures of it changed, the oldest first. */
    List<MeasureChange> changes() {
        return List.copyOf(changes);
    }

    public Facts facts() {
        return new Facts(
                lineId,
                name,
                dimension,
                retailPrice,
                low,
                List.copyOf(packs),
                List.copyOf(measures),
                sheet,
                List.copyOf(motifs),
                limits == null ? Limits.NONE : limits,
                new Weighing(emptyGrams, gramsPerMl),
                wear);
    }

    public long version() {
        return version;
    }
}
