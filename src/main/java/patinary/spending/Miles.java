package patinary.spending;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.web.Answers;

/** Reads miles as they are typed: zero or more, to a tenth. */
final class Miles {

    private static final BigDecimal MOST = new BigDecimal("99999999.9");
    private static final int DECIMALS = 1;

    private Miles() {}

    /** Miles that may be left out; what cannot be read is an error beside the field. */
    static @Nullable BigDecimal optional(Answers answers, String field, String typed, String message) {
        Optional<BigDecimal> miles = answers.decimal(field, typed, message).map(BigDecimal::stripTrailingZeros);
        if (miles.filter(one -> !isReasonable(one)).isPresent()) {
            answers.wrong(field, message);
            return null;
        }
        return miles.orElse(null);
    }

    /** Miles above zero that must be there; one mile where they cannot be read. */
    static BigDecimal aboveZero(Answers answers, String field, String typed, String message) {
        Optional<BigDecimal> miles = answers.decimal(field, typed, message).map(BigDecimal::stripTrailingZeros);
        boolean missing = miles.isEmpty() && typed.isBlank();
        boolean wrong =
                miles.filter(one -> one.signum() == 0 || !isReasonable(one)).isPresent();
        if (missing || wrong) {
            answers.wrong(field, message);
        }
        return miles.orElse(BigDecimal.ONE);
    }

    static String plain(@Nullable BigDecimal miles) {
        return miles == null ? "" : miles.stripTrailingZeros().toPlainString();
    }

    private static boolean isReasonable(BigDecimal miles) {
        return miles.signum() >= 0 && miles.compareTo(MOST) <= 0 && miles.scale() <= DECIMALS;
    }
}
