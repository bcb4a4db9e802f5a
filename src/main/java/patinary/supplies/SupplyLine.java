package patinary.supplies;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;

/** A family of supplies by one maker and of one kind. */
@Entity
@Table(name = "supply_line")
public class SupplyLine {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    private String maker = "";

    @Version
    private long version;

    protected SupplyLine() {}

    public SupplyLine(UUID id, String name, String maker) {
        this.id = id;
        rewrite(name, maker);
    }

    public final void rewrite(String newName, String newMaker) {
        name = newName;
        maker = newMaker;
    }

    public UUID id() {
        return id;
    }

    public String name() {
        return name;
    }

    public String maker() {
        return maker;
    }

    public long version() {
        return version;
    }
}
