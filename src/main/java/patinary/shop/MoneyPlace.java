package patinary.shop;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;

/** Where money is: the cash box, the bank, a card, a channel that keeps a balance. */
@Entity
@Table(name = "money_place")
public class MoneyPlace {

    /** What sort of place it is. */
    public enum Kind {
        CASH,
        BANK,
        CARD,
        /** A channel or payment service that gathers money and pays it out. */
        CHANNEL
    }

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @Enumerated(EnumType.STRING)
    private Kind kind = Kind.CASH;

    @Version
    private long version;

    protected MoneyPlace() {}

    public MoneyPlace(UUID id, String name, Kind kind) {
        this.id = id;
        rewrite(name, kind);
    }

    public final void rewrite(String newName, Kind newKind) {
        name = newName;
        kind = newKind;
    }

    public UUID id() {
        return id;
    }

    public String name() {
        return name;
    }

    public Kind kind() {
        return kind;
    }

    public long version() {
        return version;
    }
}
