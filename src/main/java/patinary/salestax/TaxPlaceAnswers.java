package patinary.salestax;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads what is typed of a place of sales tax. */
@Component
class TaxPlaceAnswers {

    private static final int NAME = 120;
    private static final int DECIMALS = 4;

    private final TaxPlaces places;
    private final CurrentShop shop;

    TaxPlaceAnswers(TaxPlaces places, CurrentShop shop) {
        this.places = places;
        this.shop = shop;
    }

    String name(TaxPlaceForm form, Errors errors, UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "salestax.error.name");
        if (places.nameTaken(name, id)) {
            answers.wrong("name", "salestax.error.name-taken");
        }
        return name;
    }

    /** The rate typed; harmless where there are errors. */
    TaxRule rule(TaxPlaceForm form, Errors errors, Optional<TaxPlace> place) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate from = answers.date("validFrom", form.validFrom);
        if (place.stream()
                .flatMap(known -> known.rules().stream())
                .anyMatch(rule -> rule.validFrom().equals(from))) {
            answers.wrong("validFrom", "salestax.error.day-taken");
        }
        if (form.percent.isBlank()) {
            answers.wrong("percent", "salestax.error.percent");
        }
        Percent percent = answers.percent("percent", form.percent).orElse(Percent.ZERO);
        BigDecimal kept = percent.value().setScale(DECIMALS, RoundingMode.HALF_UP);
        if (kept.compareTo(percent.value()) != 0) {
            answers.wrong("percent", "salestax.error.percent-decimals", DECIMALS);
        }
        return new TaxRule(from, new Percent(kept), form.shippingTaxed);
    }
}
