package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** What remains of a price on a channel, line by line, and of a table of prices. Nothing of it is stored. */
@Component
class FeeTrial {

    /**
     * What remains, by the rule of a day.
     *
     * @param rule null where the channel has none yet, and keeps nothing
     */
    record Result(LocalDate day, @Nullable FeeRule rule, Remains remains) {}

    /** As many prices as fit on a sheet of paper. */
    private static final int MOST_ROWS = 60;

    private static final long UNITS = 100;

    private final ChannelTerms usual;
    private final CurrentShop shop;

    FeeTrial(ChannelTerms usual, CurrentShop shop) {
        this.usual = usual;
        this.shop = shop;
    }

    /** Puts what is usual into a form that has not been sent. */
    void fill(FeeTrialForm form, UUID channel) {
        if (!form.tried) {
            UsualTerms terms = usual.of(channel);
            form.shipping = plain(terms.shipping());
            form.outlay = plain(terms.outlay());
            form.tax = terms.tax().value().signum() == 0
                    ? ""
                    : terms.tax().value().stripTrailingZeros().toPlainString();
            form.shippingTaxed = terms.shippingTaxed();
        }
    }

    UsualTerms terms(FeeTrialForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        return new UsualTerms(
                answers.optionalAmount("shipping", form.shipping).orElse(Amount.ZERO),
                answers.optionalAmount("outlay", form.outlay).orElse(Amount.ZERO),
                answers.percent("tax", form.tax).orElse(Percent.ZERO),
                form.shippingTaxed);
    }

    /** Nothing where no price was typed, or something could not be read. */
    @Nullable
    Result result(FeeTrialForm form, ChannelFacts channel, Errors errors) {
        UsualTerms terms = terms(form, errors);
        Amount price = form.tried ? new Answers(errors, shop.currency()).amount("price", form.price) : null;
        if (price == null || errors.hasErrors()) {
            return null;
        }
        FeeRule rule = channel.ruleOn(shop.today()).orElse(null);
        return new Result(shop.today(), rule, terms.under(rule).remains(price));
    }

    /** What remains of each price of a table; empty where it cannot be drawn. */
    List<Remains> table(FeeTrialForm form, ChannelFacts channel, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        UsualTerms terms = terms(form, errors);
        Amount from = answers.optionalAmount("from", form.from).orElse(units(5));
        Amount to = answers.optionalAmount("to", form.to).orElse(units(100));
        Amount step = answers.optionalAmount("step", form.step).orElse(units(5));
        if (step.isZero()) {
            answers.wrong("step", "selling.error.fee-above");
        } else if ((to.minor() - from.minor()) / step.minor() >= MOST_ROWS) {
            answers.wrong("step", "selling.error.trial-rows", MOST_ROWS);
        }
        if (errors.hasErrors()) {
            return List.of();
        }
        Terms all = terms.under(channel.ruleOn(shop.today()).orElse(null));
        List<Remains> rows = new ArrayList<>();
        for (long price = from.minor(); price <= to.minor(); price += step.minor()) {
            rows.add(all.remains(Amount.of(price)));
        }
        return rows;
    }

    private Amount units(long whole) {
        return Amount.of(
                shop.currency().digits() == 0
                        ? whole * UNITS
                        : whole * power(shop.currency().digits()));
    }

    private static long power(int digits) {
        long power = 1;
        for (int i = 0; i < digits; i++) {
            power *= 10;
        }
        return power;
    }

    private String plain(Amount amount) {
        return amount.isZero() ? "" : shop.currency().plain(amount);
    }
}
