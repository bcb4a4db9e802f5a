package patinary.selling;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import patinary.web.Answers;

/** The weights of a set's pieces as typed: one number for each, in their order; nothing typed means like weights. */
final class Weights {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(?:\\.[0-9]{1,4})?");

    private Weights() {}

    static List<BigDecimal> read(Answers answers, String field, String typed, int pieces) {
        List<BigDecimal> like = Collections.nCopies(pieces, BigDecimal.ONE);
        if (typed.isBlank()) {
            return like;
        }
        String[] words = typed.strip().split("[\\s,;]+");
        if (words.length != pieces
                || !Arrays.stream(words).allMatch(word -> NUMBER.matcher(word).matches())) {
            answers.wrong(field, "selling.error.weights", pieces);
            return like;
        }
        return Arrays.stream(words).map(BigDecimal::new).toList();
    }

    /** As {@link #read} takes it; empty where all are alike. */
    static String write(List<BigDecimal> weights) {
        if (weights.stream().allMatch(weight -> weight.compareTo(weights.get(0)) == 0)) {
            return "";
        }
        return weights.stream()
                .map(weight ->
                        weight.signum() == 0 ? "0" : weight.stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(" "));
    }
}
