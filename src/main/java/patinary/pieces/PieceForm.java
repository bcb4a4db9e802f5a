package patinary.pieces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What may be said of a piece. A name typed under kind or style is added to that list. */
class PieceForm {

    /** As many decimals as a typed number may have. */
    private static final int TYPED_SCALE = 9;

    public long version;
    public String code = "";
    public String title = "";
    public String kind = "";
    public String newKind = "";
    public String style = "";
    public String newStyle = "";
    public String material = "";
    public String area = "";
    public String shape = "";
    public String measures = "";
    public String finish = "";
    public String place = "";
    public String tags = "";
    public String note = "";

    static PieceForm of(Piece piece) {
        Piece.Facts facts = piece.facts();
        PieceForm form = new PieceForm();
        form.version = piece.version();
        form.code = facts.code();
        form.title = facts.title();
        form.kind = id(facts.kindId());
        form.style = id(facts.styleId());
        form.material = facts.material();
        form.area = area(facts.area());
        MeasuredShape shape = piece.measuredShape();
        form.shape = shape == null ? "" : shape.shape().name();
        form.measures = shape == null ? "" : shape.measures();
        form.finish = id(piece.plannedFinishId());
        form.place = facts.place();
        form.tags = String.join(", ", facts.tags());
        form.note = facts.note();
        return form;
    }

    /** The stored surface as it can be typed again. */
    static String area(@Nullable BigDecimal area) {
        if (area == null) {
            return "";
        }
        BigDecimal rounded = area.setScale(TYPED_SCALE, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString() + " sq cm";
    }

    private static String id(@Nullable UUID id) {
        return id == null ? "" : id.toString();
    }
}
