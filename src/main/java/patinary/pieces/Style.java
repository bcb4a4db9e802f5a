package patinary.pieces;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.UUID;

/** A look, from her own list. */
@Entity
@Table(name = "style")
public class Style extends OwnWord {

    protected Style() {}

    public Style(UUID id, String name) {
        super(id, name);
    }
}
