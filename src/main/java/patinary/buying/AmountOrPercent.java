package patinary.buying;

import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.web.Answers;

/** What one field may say in either way: {@code 2.50} or {@code 10%}; at most one of both is there. */
record AmountOrPercent(@Nullable Amount amount, @Nullable Percent percent) {

    /** As many decimals as a percentage is stored with. */
    private static final int DECIMALS = 4;

    static AmountOrPercent read(Answers answers, String field, String answer) {
        if (!answer.contains("%")) {
            return new AmountOrPercent(answers.optionalAmount(field, answer).orElse(null), null);
        }
        if (answer.replace("%", "").isBlank()) {
            answers.wrong(field, "web.answer.percent");
        }
        return new AmountOrPercent(null, readPercent(answers, field, answer));
    }

    /** A percentage, with or without its sign, or null where the answer is empty or cannot be read. */
    static @Nullable Percent readPercent(Answers answers, String field, String answer) {
        Percent percent = answers.percent(field, answer)
                .map(read -> new Percent(read.value().stripTrailingZeros()))
                .orElse(null);
        if (percent != null && percent.value().scale() > DECIMALS) {
            answers.wrong(field, "buying.error.percent-decimals", DECIMALS);
        }
        return percent;
    }

    boolean isEmpty() {
        return amount == null && percent == null;
    }
}
