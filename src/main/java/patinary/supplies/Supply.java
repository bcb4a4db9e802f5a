package patinary.supplies;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.money.Amount;

/** One product that she works with or sells: bought by the container, used in its own unit. */
@Entity
@Table(name = "supply")
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
     * @param weighing what is known for counting it by weighing
     */
    public record Facts(
            UUID lineId,
            String name,
            Dimension dimension,
            @Nullable Amount retailPrice,
            @Nullable BigDecimal low,
            List<Named> packs,
            List<Named> measures,
            Weighing weighing) {

        public Facts(
                UUID lineId,
                String name,
                Dimension dimension,
                @Nullable Amount retailPrice,
                @Nullable BigDecimal low,
                List<Named> packs,
                List<Named> measures) {
            this(lineId, name, dimension, retailPrice, low, packs, measures, Weighing.UNKNOWN);
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
    private List<Named> packs = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "supply_measure", joinColumns = @JoinColumn(name = "supply_id"))
    @OrderBy("name")
    private List<Named> measures = new ArrayList<>();

    @Column(name = "empty_grams")
    private @Nullable BigDecimal emptyGrams;

    @Column(name = "grams_per_ml")
    private @Nullable BigDecimal gramsPerMl;

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
        List<Named> newPacks = List.copyOf(facts.packs());
        packs.clear();
        packs.addAll(newPacks);
        List<Named> newMeasures = List.copyOf(facts.measures());
        measures.clear();
        measures.addAll(newMeasures);
        emptyGrams = facts.weighing().emptyGrams();
        gramsPerMl = facts.weighing().gramsPerMl();
    }

    public UUID id() {
        return id;
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
                new Weighing(emptyGrams, gramsPerMl));
    }

    public long version() {
        return version;
    }
}
