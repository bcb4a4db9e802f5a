package patinary.selling;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import patinary.money.Amount;

/** Where she sells: her own web shop, a market stall, a marketplace. */
@Entity
@Table(name = "channel")
public class Channel {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private UUID moneyPlaceId = new UUID(0, 0);
    private boolean passesTax;

    @ElementCollection
    @CollectionTable(name = "channel_fee", joinColumns = @JoinColumn(name = "channel_id"))
    @OrderBy("validFrom")
    private List<FeeRule> fees = new ArrayList<>();

    @Version
    private long version;

    protected Channel() {}

    public Channel(UUID id, String name, UUID moneyPlaceId, boolean passesTax, List<FeeRule> fees) {
        this.id = id;
        rewrite(name, moneyPlaceId, passesTax, fees);
    }

    public final void rewrite(String name, UUID moneyPlaceId, boolean passesTax, List<FeeRule> fees) {
        this.name = name;
        this.moneyPlaceId = moneyPlaceId;
        this.passesTax = passesTax;
        List<FeeRule> copy = List.copyOf(fees);
        this.fees.clear();
        this.fees.addAll(copy);
    }

    /** The fee of a sale on a day, by the rule that holds then; nothing before the first rule. */
    public Amount fee(LocalDate day, Amount priceAndShipping) {
        return ruleOn(day).map(rule -> rule.on(priceAndShipping)).orElse(Amount.ZERO);
    }

    public Optional<FeeRule> ruleOn(LocalDate day) {
        return FeeRule.on(day, fees);
    }

    public UUID id() {
        return id;
    }

    public String name() {
        return name;
    }

    /** Where the channel's money gathers before it is paid out, or is put at once. */
    public UUID moneyPlaceId() {
        return moneyPlaceId;
    }

    /** Whether the channel itself collects the sales tax and pays it over. */
    public boolean passesTax() {
        return passesTax;
    }

    public List<FeeRule> fees() {
        return List.copyOf(fees);
    }

    public long version() {
        return version;
    }
}
