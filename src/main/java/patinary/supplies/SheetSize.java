package patinary.supplies;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import patinary.measure.Sides;

/** The size of one sheet, in centimetres. */
@Embeddable
public record SheetSize(
        @Column(name = "width_cm") BigDecimal width,
        @Column(name = "height_cm") BigDecimal height) {

    public Sides sides() {
        return new Sides(width, height);
    }
}
