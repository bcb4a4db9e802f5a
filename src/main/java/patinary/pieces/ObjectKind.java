package patinary.pieces;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What kind of thing a piece is, from her own list. */
@Entity
@Table(name = "object_kind")
public class ObjectKind extends OwnWord {

    @Column(name = "area_cm2")
    private @Nullable BigDecimal usualArea;

    protected ObjectKind() {}

    public ObjectKind(UUID id, String name) {
        super(id, name);
    }

    /** The surface a thing of this kind usually has, in square centimetres, or null. */
    public @Nullable BigDecimal usualArea() {
        return usualArea;
    }
}
