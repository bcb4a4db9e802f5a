package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * What a channel keeps of a sale from a day on: docs/handbook/what-to-ask.md. Whatever is null is not part of the rule.
 *
 * @param validFrom the first day it holds for
 * @param percent of the base
 * @param fixed per sale
 * @param base what the percentage is taken of; null is price and shipping
 * @param least the channel's fee is never lower
 * @param most the channel's fee is never higher
 * @param above where the base is above this, the next percentage holds
 * @param abovePercent of what is above, or of the whole base
 * @param furtherAbove where the base is above this, which is more than {@code above}, the last percentage holds
 * @param furtherPercent of what is above that, or of the whole base
 * @param aboveOnWhole whether the percentages above hold for the whole base and not only for what is above
 * @param paymentPercent what the payment service keeps of all the buyer pays, tax and all; apart from least and most
 * @param paymentFixed what it keeps of each payment
 * @param perOffer what the channel charges for putting something up, sold or not; not part of the fee of a sale
 * @param perMonth what it charges for each month, as the rent of a booth; not part of the fee of a sale
 */
@Embeddable
public record FeeRule(
        LocalDate validFrom,
        Percent percent,
        @Column(name = "fixed_minor") Amount fixed,
        @Enumerated(EnumType.STRING) @Nullable FeeBase base,
        @Column(name = "least_minor") @Nullable Amount least,
        @Column(name = "most_minor") @Nullable Amount most,
        @Column(name = "above_minor") @Nullable Amount above,
        @Nullable Percent abovePercent,
        @Column(name = "further_above_minor") @Nullable Amount furtherAbove,
        @Nullable Percent furtherPercent,
        @Nullable Boolean aboveOnWhole,
        @Nullable Percent paymentPercent,
        @Column(name = "payment_fixed_minor") @Nullable Amount paymentFixed,
        @Column(name = "offer_minor") @Nullable Amount perOffer,
        @Column(name = "month_minor") @Nullable Amount perMonth) {

    /** A rule of sales alone: nothing for an offer or a month. */
    public FeeRule(
            LocalDate validFrom,
            Percent percent,
            Amount fixed,
            @Nullable FeeBase base,
            @Nullable Amount least,
            @Nullable Amount most,
            @Nullable Amount above,
            @Nullable Percent abovePercent,
            @Nullable Amount furtherAbove,
            @Nullable Percent furtherPercent,
            @Nullable Boolean aboveOnWhole,
            @Nullable Percent paymentPercent,
            @Nullable Amount paymentFixed) {
        this(
                validFrom,
                percent,
                fixed,
                base,
                least,
                most,
                above,
                abovePercent,
                furtherAbove,
                furtherPercent,
                aboveOnWhole,
                paymentPercent,
                paymentFixed,
                null,
                null);
    }

    /** A percentage of price and shipping, and a fixed amount. */
    public FeeRule(LocalDate validFrom, Percent percent, Amount fixed) {
        this(validFrom, percent, fixed, null, null, null, null, null, null, null, null, null, null);
    }

    /** The rule that holds on a day: the latest that has begun; none before the first. */
    static Optional<FeeRule> on(LocalDate day, List<FeeRule> rules) {
        return rules.stream()
                .filter(rule -> !rule.validFrom().isAfter(day))
                .max(Comparator.comparing(FeeRule::validFrom));
    }

    /** All that is kept of what a buyer is charged: the channel's fee and the payment fee. */
    public Amount on(Charged charged) {
        return fee(charged).plus(payment(charged));
    }

    /** What is kept of price and shipping where no tax is known. */
    public Amount on(Amount priceAndShipping) {
        return on(new Charged(priceAndShipping, Amount.ZERO, Amount.ZERO));
    }

    /** The channel's own fee: the percentages rounded half up once, the fixed amount, then the least and the most. */
    public Amount fee(Charged charged) {
        Amount of = charged.base(baseOrUsual());
        Amount fee = steps().part(of, RoundingMode.HALF_UP).plus(fixed);
        Amount atLeast = least == null ? fee : fee.max(least);
        return most == null ? atLeast : atLeast.min(most);
    }

    /** What the payment service keeps, rounded half up once. */
    public Amount payment(Charged charged) {
        Amount part = paymentPercent == null ? Amount.ZERO : paymentPercent.of(charged.all(), RoundingMode.HALF_UP);
        return paymentFixed == null ? part : part.plus(paymentFixed);
    }

    FeeBase baseOrUsual() {
        return base == null ? FeeBase.PRICE_AND_SHIPPING : base;
    }

    FeeSteps steps() {
        List<FeeSteps.Step> steps = new ArrayList<>();
        steps.add(new FeeSteps.Step(Amount.ZERO, percent));
        if (above != null && abovePercent != null) {
            steps.add(new FeeSteps.Step(above, abovePercent));
        }
        if (furtherAbove != null && furtherPercent != null) {
            steps.add(new FeeSteps.Step(furtherAbove, furtherPercent));
        }
        return new FeeSteps(steps, Boolean.TRUE.equals(aboveOnWhole));
    }

    /** Whether it is more than a percentage and a fixed amount. */
    public boolean isFuller() {
        return base != null || least != null || most != null || above != null || hasPayment() || hasStanding();
    }

    /** Whether something is charged that no sale is asked for. */
    public boolean hasStanding() {
        return perOffer != null || perMonth != null;
    }

    public boolean hasPayment() {
        return paymentPercent != null || paymentFixed != null;
    }
}
