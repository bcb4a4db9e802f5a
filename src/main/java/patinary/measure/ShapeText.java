package patinary.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the measures of a shape as they are called out: {@code 10 x 7 x 9 in}, {@code 25 cm x 1 ft}. */
public final class ShapeText {

    private static final Pattern BETWEEN = Pattern.compile("(?i)\\s*(?:x|×|\\bby\\b)\\s*");

    private ShapeText() {}

    /** What came of it. */
    public sealed interface Reading permits Surface, Refused {}

    /** @param area in square centimetres, above zero */
    public record Surface(BigDecimal area) implements Reading {}

    /**
     * It could not be read.
     *
     * @param messageKey the reason; the first argument of {@code measure.error.shape} is how many measures are wanted
     */
    public record Refused(String messageKey, List<Object> arguments) implements Reading {}

    /** A number without a unit has the unit of the next one behind it. */
    public static Reading read(Shape shape, String typed) {
        try {
            return new Surface(shape.area(lengths(typed)).inBase());
        } catch (UnreadableQuantity unreadable) {
            return new Refused(unreadable.messageKey(), List.copyOf(unreadable.arguments()));
        } catch (IllegalArgumentException impossible) {
            return new Refused("measure.error.shape", List.of(shape.measures()));
        }
    }

    /**
     * The single measures, in the order in which they were called out; whether they are lengths is not asked here.
     *
     * @throws UnreadableQuantity where one of them is no number, or has no unit and none behind it has one
     */
    public static List<Quantity> lengths(String typed) {
        List<Quantity> lengths = new ArrayList<>();
        Optional<Unit> unit = Optional.empty();
        List<String> parts = new ArrayList<>(List.of(BETWEEN.split(typed.strip())));
        Collections.reverse(parts);
        for (String part : parts) {
            Quantity read = QuantityText.read(part);
            if (read.unit() != Unit.EACH) {
                unit = Optional.of(read.unit());
            } else if (unit.isPresent()) {
                read = new Quantity(read.value(), unit.get());
            } else {
                throw new UnreadableQuantity("measure.error.unitMissing", typed);
            }
            lengths.add(0, read);
        }
        return lengths;
    }
}
