package patinary.pieces;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;

/** A look, from her own list. */
@Entity
@Table(name = "style")
public class Style {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @Version
    private long version;

    protected Style() {}

    public Style(UUID id, String name) {
        this.id = id;
        this.name = name;
    }

    public UUID id() {
        return id;
    }

    public String name() {
        return name;
    }

    public void rename(String newName) {
        name = newName;
    }

    public long version() {
        return version;
    }
}
