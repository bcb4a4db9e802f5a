package patinary.supplies;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import patinary.measure.Sides;

/** Something printed on a sheet that may be cut out by its name; sides in centimetres. */
@Embeddable
public record Motif(
        String name,
        @Column(name = "width_cm") BigDecimal width,
        @Column(name = "height_cm") BigDecimal height) {

    public Sides sides() {
        return new Sides(width, height);
    }
}
