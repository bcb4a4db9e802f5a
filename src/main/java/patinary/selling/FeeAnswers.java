package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/**
 * Reads the fee rules in the form of a channel, and fills them in. What is left empty is not part of a rule; a rule that
 * names what an empty answer means, price and shipping or a step that holds for what lies above, is the same rule.
 */
@Component
class FeeAnswers {

    private final CurrentShop shop;

    FeeAnswers(CurrentShop shop) {
        this.shop = shop;
    }

    ChannelForm.Rule row(FeeRule rule) {
        ChannelForm.Rule row = new ChannelForm.Rule();
        row.validFrom = rule.validFrom().toString();
        row.percent = plain(rule.percent());
        row.fixed = plain(rule.fixed());
        row.base = rule.baseOrUsual() == FeeBase.PRICE_AND_SHIPPING
                ? ""
                : rule.baseOrUsual().name();
        row.least = plain(rule.least());
        row.most = plain(rule.most());
        row.above = plain(rule.above());
        row.abovePercent = plain(rule.abovePercent());
        row.furtherAbove = plain(rule.furtherAbove());
        row.furtherPercent = plain(rule.furtherPercent());
        row.aboveOnWhole = Boolean.TRUE.equals(rule.aboveOnWhole());
        row.paymentPercent = plain(rule.paymentPercent());
        row.paymentFixed = plain(rule.paymentFixed());
        row.perOffer = plain(rule.perOffer());
        row.perMonth = plain(rule.perMonth());
        return row;
    }

    List<FeeRule> read(List<ChannelForm.Rule> rows, Answers answers) {
        List<FeeRule> rules = new ArrayList<>();
        Set<LocalDate> days = new HashSet<>();
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).isEmpty()) {
                String at = "rules[" + i + "].";
                FeeRule rule = rule(at, rows.get(i), answers);
                if (!days.add(rule.validFrom())) {
                    answers.wrong(at + "validFrom", "selling.error.rule-twice");
                }
                check(at, rule, answers);
                rules.add(rule);
            }
        }
        return rules;
    }

    private static FeeRule rule(String at, ChannelForm.Rule row, Answers answers) {
        return new FeeRule(
                answers.date(at + "validFrom", row.validFrom),
                answers.percent(at + "percent", row.percent).orElse(Percent.ZERO),
                answers.optionalAmount(at + "fixed", row.fixed).orElse(Amount.ZERO),
                row.base.isBlank()
                        ? null
                        : answers.word(at + "base", row.base, FeeBase.class, "selling.error.fee-base")
                                .orElse(null),
                amount(answers, at + "least", row.least),
                amount(answers, at + "most", row.most),
                amount(answers, at + "above", row.above),
                percent(answers, at + "abovePercent", row.abovePercent),
                amount(answers, at + "furtherAbove", row.furtherAbove),
                percent(answers, at + "furtherPercent", row.furtherPercent),
                row.aboveOnWhole ? Boolean.TRUE : null,
                percent(answers, at + "paymentPercent", row.paymentPercent),
                amount(answers, at + "paymentFixed", row.paymentFixed),
                amount(answers, at + "perOffer", row.perOffer),
                amount(answers, at + "perMonth", row.perMonth));
    }

    private static void check(String at, FeeRule rule, Answers answers) {
        if (rule.least() != null && rule.most() != null && rule.least().compareTo(rule.most()) > 0) {
            answers.wrong(at + "most", "selling.error.fee-most");
        }
        together(at + "abovePercent", rule.above(), rule.abovePercent(), answers);
        together(at + "furtherPercent", rule.furtherAbove(), rule.furtherPercent(), answers);
        if (rule.above() != null && rule.above().minor() == 0) {
            answers.wrong(at + "above", "selling.error.fee-above");
        }
        if (rule.furtherAbove() != null
                && (rule.above() == null || rule.furtherAbove().compareTo(rule.above()) <= 0)) {
            answers.wrong(at + "furtherAbove", "selling.error.fee-further");
        }
    }

    private static void together(String field, @Nullable Amount above, @Nullable Percent percent, Answers answers) {
        if (Objects.isNull(above) != Objects.isNull(percent)) {
            answers.wrong(field, "selling.error.fee-together");
        }
    }

    private static @Nullable Amount amount(Answers answers, String field, String typed) {
        return answers.optionalAmount(field, typed).orElse(null);
    }

    private static @Nullable Percent percent(Answers answers, String field, String typed) {
        return answers.percent(field, typed).orElse(null);
    }

    private String plain(@Nullable Amount amount) {
        return amount == null ? "" : shop.currency().plain(amount);
    }

    private static String plain(@Nullable Percent percent) {
        return percent == null ? "" : percent.value().stripTrailingZeros().toPlainString();
    }
}
