package patinary.pieces;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.UUID;

/** What kind of thing a piece is, from her own list. */
@Entity
@Table(name = "object_kind")
public class ObjectKind extends OwnWord {

    protected ObjectKind() {}

    public ObjectKind(UUID id, String name) {
        super(id, name);
    }
}
