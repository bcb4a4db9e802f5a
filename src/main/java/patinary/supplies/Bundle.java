package patinary.supplies;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import patinary.money.Amount;

/** Supplies from the retail shelf that she sells together under one name, at one price. */
@Entity
@Table(name = "bundle")
public class Bundle {

    /**
     * So much of a supply is in one bundle.
     *
     * @param line its place, from 1
     * @param typed the quantity as typed
     * @param quantity in the supply's base unit, above zero
     */
    @Embeddable
    public record Part(int line, UUID supplyId, String typed, BigDecimal quantity) {}

    /**
     * What is known of a bundle.
     *
     * @param price asked for one, without tax
     * @param parts each of another supply
     */
    public record Facts(String name, Amount price, List<Part> parts) {

        /**
         * How many bundles a stock makes; it is the part that runs out first that decides.
         *
         * @param stock the quantity of each supply, in its base unit; what is missing there is not there
         */
        public long makes(Map<UUID, BigDecimal> stock) {
            return parts.stream()
                    .map(part -> stock.getOrDefault(part.supplyId(), BigDecimal.ZERO)
                            .max(BigDecimal.ZERO)
                            .divide(part.quantity(), 0, RoundingMode.FLOOR))
                    .mapToLong(BigDecimal::longValue)
                    .min()
                    .orElse(0);
        }
    }

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @Column(name = "price_minor")
    private Amount price = Amount.ZERO;

    private boolean removed;

    @ElementCollection
    @CollectionTable(name = "bundle_part", joinColumns = @JoinColumn(name = "bundle_id"))
    @OrderBy("line")
    private List<Part> parts = new ArrayList<>();

    @Version
    private long version;

    protected Bundle() {}

    public Bundle(UUID id, Facts facts) {
        this.id = id;
        rewrite(facts);
    }

    /** Replaces everything but the id; sales of before keep what they say. */
    final void rewrite(Facts facts) {
        name = facts.name();
        price = facts.price();
        parts.clear();
        parts.addAll(facts.parts());
    }

    /** It is sold no more; sales that named it still do. */
    void remove() {
        removed = true;
    }

    public UUID id() {
        return id;
    }

    public long version() {
        return version;
    }

    public boolean removed() {
        return removed;
    }

    public Facts facts() {
        return new Facts(name, price, List.copyOf(parts));
    }
}
