package patinary.pieces;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;

/** What kind of thing a piece is, from her own list. */
@Entity
@Table(name = "object_kind")
public class ObjectKind {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @Version
    private long version;

    protected ObjectKind() {}

    public ObjectKind(UUID id, String name) {
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
