package patinary.sending;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import patinary.measure.Dimension;
import patinary.measure.UnreadableQuantity;
import patinary.web.Answers;

/** Reads weights and sizes from forms. */
final class Measured {

    /** The longest size that is kept. */
    static final int SIZE = 60;

    private Measured() {}

    /** A weight above zero in grams, or nothing. */
    static Optional<BigDecimal> weight(Answers answers, String field, String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Optional<BigDecimal> grams = answers.quantity(field, typed, Dimension.MASS, List.of());
        if (grams.filter(weight -> weight.signum() <= 0).isPresent()) {
            answers.wrong(field, "sending.error.weight");
            return Optional.empty();
        }
        return grams;
    }

    /** Three lengths, as typed, or an empty text. */
    static String size(Answers answers, String field, String typed) {
        String size = answers.note(field, typed, SIZE);
        if (size.isBlank()) {
            return size;
        }
        try {
            BoxSize.read(size);
        } catch (UnreadableQuantity unreadable) {
            answers.wrong(field, unreadable.messageKey(), unreadable.arguments().toArray());
        } catch (IllegalArgumentException impossible) {
            answers.wrong(field, "sending.error.size");
        }
        return size;
    }
}
