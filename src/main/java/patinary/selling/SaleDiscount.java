package patinary.selling;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.discounts.Discount;
import patinary.discounts.DiscountBook;
import patinary.money.Amount;
import patinary.web.Answers;

/** Reads what is taken off the whole of a sale: an amount, a percentage of it, or what a code gives. */
@Component
class SaleDiscount {

    /** What is taken off, and the code for it or an empty text. */
    record Read(Amount amount, String code) {}

    private static final int CODE = 40;

    private final DiscountBook codes;

    SaleDiscount(DiscountBook codes) {
        this.codes = codes;
    }

    /**
     * What was typed goes before what the code gives, as the buyer may have paid another price.
     *
     * @param price of all lines, which no discount goes beyond
     * @param before the code that the sale had until now; it is not asked again whether it holds
     */
    Read read(SaleForm form, Answers answers, LocalDate day, Amount price, @Nullable String before) {
        String typed = answers.note("discountCode", form.discountCode, CODE);
        Optional<Discount> known = typed.isEmpty() ? Optional.empty() : codes.find(typed);
        if (!typed.isEmpty() && !typed.equalsIgnoreCase(before)) {
            check(answers, known, day);
        }
        Amount amount = form.discount.isBlank()
                ? known.map(discount -> discount.off(price)).orElse(Amount.ZERO)
                : amount(form.discount, answers, price);
        if (amount.compareTo(price) > 0) {
            answers.wrong("discount", "selling.error.discount");
        }
        return new Read(amount, known.map(Discount::code).orElse(typed));
    }

    private static void check(Answers answers, Optional<Discount> known, LocalDate day) {
        if (known.isEmpty()) {
            answers.wrong("discountCode", "selling.error.discount-code");
        } else if (!known.get().holdsOn(day)) {
            answers.wrong("discountCode", "selling.error.discount-code-day");
        }
    }

    private static Amount amount(String typed, Answers answers, Amount price) {
        if (typed.strip().endsWith("%")) {
            return answers.percent("discount", typed)
                    .map(percent -> percent.of(price, RoundingMode.HALF_UP))
                    .orElse(Amount.ZERO);
        }
        return answers.optionalAmount("discount", typed).orElse(Amount.ZERO);
    }
}
