package patinary.bench;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How a use was cut out of its sheet.
 *
 * @param line the use's order on the entry
 * @param kind by its size, as a part of the sheet, or as a motif
 * @param motif the motif's name, or nothing
 * @param width of one cut in centimetres; null for a part
 * @param height of one cut in centimetres; null for a part
 * @param howMany cuts alike
 */
@Embeddable
public record SheetCut(
        int line,
        @Enumerated(EnumType.STRING) Kind kind,
        String motif,
        @Column(name = "width_cm") @Nullable BigDecimal width,
        @Column(name = "height_cm") @Nullable BigDecimal height,
        @Column(name = "how_many") int howMany) {

    /** What was said of the cut. */
    public enum Kind {
        SIZE,
        PART,
        MOTIF
    }
}
