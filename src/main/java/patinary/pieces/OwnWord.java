package patinary.pieces;

import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Version;
import java.util.UUID;

/** A word from one of her own lists. */
@MappedSuperclass
public abstract class OwnWord {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @Version
    private long version;

    protected OwnWord() {}

    protected OwnWord(UUID id, String name) {
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
