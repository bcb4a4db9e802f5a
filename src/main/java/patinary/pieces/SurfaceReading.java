package patinary.pieces;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.measure.Shape;
import patinary.measure.ShapeText;
import patinary.web.Answers;
import patinary.web.Choice;

/** Reads a surface: typed itself, or as a shape and its measures. */
final class SurfaceReading {

    private static final int MEASURES = 200;

    /**
     * A surface as far as it is known.
     *
     * @param area in square centimetres
     * @param shape how it was measured; null where the surface itself was typed
     */
    record Surface(@Nullable BigDecimal area, @Nullable MeasuredShape shape) {

        static final Surface UNKNOWN = new Surface(null, null);
    }

    private final Answers answers;
    private final Surface stored;

    SurfaceReading(Answers answers, Surface stored) {
        this.answers = answers;
        this.stored = stored;
    }

    /** Where an answer was left as it was drawn, the stored surface stays to its last decimal. */
    Surface read(String area, String shape, String measures) {
        MeasuredShape old = stored.shape();
        boolean isAreaNew = !area.equals(PieceForm.area(stored.area()));
        boolean isShapeNew = !shape.equals(old == null ? "" : old.shape().name())
                || !measures.strip().equals(old == null ? "" : old.measures());
        if (!isAreaNew && !isShapeNew) {
            return stored;
        }
        if (!isShapeNew || shape.isBlank() && measures.isBlank()) {
            return new Surface(typed(area), null);
        }
        if (isAreaNew && !area.isBlank()) {
            answers.wrong("area", "pieces.error.two-areas");
        }
        return measured(shape, measures);
    }

    private @Nullable BigDecimal typed(String typed) {
        if (typed.isBlank()) {
            return null;
        }
        if (typed.equals(PieceForm.area(stored.area()))) {
            return stored.area();
        }
        Optional<BigDecimal> area = answers.quantity("area", typed, Dimension.AREA, List.of());
        if (area.filter(value -> value.signum() <= 0).isPresent()) {
            answers.wrong("area", "pieces.error.area");
        }
        return area.orElse(null);
    }

    private Surface measured(String typedShape, String typedMeasures) {
        Optional<Shape> shape = answers.word("shape", typedShape, Shape.class, "pieces.error.shape");
        String measures = answers.text("measures", typedMeasures, MEASURES, "pieces.error.measures");
        if (shape.isEmpty() || measures.isBlank()) {
            return Surface.UNKNOWN;
        }
        ShapeText.Reading reading = ShapeText.read(shape.get(), measures);
        if (reading instanceof ShapeText.Surface surface) {
            return new Surface(surface.area(), new MeasuredShape(shape.get(), measures));
        }
        ShapeText.Refused refused = (ShapeText.Refused) reading;
        answers.wrong("measures", refused.messageKey(), refused.arguments().toArray());
        return Surface.UNKNOWN;
    }

    static List<Choice> shapes() {
        return Stream.of(Shape.values())
                .map(shape -> Choice.said(shape.name(), "measure.shape." + shape.name()))
                .toList();
    }
}
