package patinary.shop;

import java.time.format.DateTimeParseException;
import java.util.List;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.money.ShopCurrency;
import patinary.money.UnreadableAmount;
import patinary.web.Choice;
import patinary.web.Tongue;

/** The rules that setup and settings have in common. */
final class Answers {

    static final int NAME = 60;
    static final int SHOP_NAME = 80;

    private final Errors errors;

    Answers(Errors errors) {
        this.errors = errors;
    }

    void text(String field, String answer, int longest, String message) {
        if (answer.isBlank() || answer.length() > longest) {
            errors.rejectValue(field, message, new Object[] {longest}, null);
        }
    }

    void oneOf(String field, String answer, List<Choice> choices, String message) {
        if (choices.stream().noneMatch(choice -> choice.value().equals(answer))) {
            errors.rejectValue(field, message);
        }
    }

    void language(String language, String country) {
        oneOf("language", language, Offered.languages(), "shop.error.language");
        if (!Tongue.countries().contains(country)) {
            errors.rejectValue("country", "shop.error.country");
        }
    }

    void date(String field, String answer, String message) {
        try {
            patinary.web.Answers.day(answer);
        } catch (DateTimeParseException unreadable) {
            errors.rejectValue(field, message);
        }
    }

    /** An empty rate is none: then no page reckons with her time. */
    Amount hourlyRate(ShopCurrency currency, String answer) {
        if (answer.isBlank()) {
            return Amount.ZERO;
        }
        try {
            Amount rate = currency.parse(answer);
            if (rate.isNegative()) {
                errors.rejectValue("hourlyRate", "shop.error.hourly-rate");
            }
            return rate;
        } catch (UnreadableAmount unreadable) {
            errors.rejectValue(
                    "hourlyRate",
                    unreadable.messageKey(),
                    unreadable.arguments().toArray(),
                    null);
            return Amount.ZERO;
        }
    }
}
