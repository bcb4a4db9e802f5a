package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.money.Amount;
import patinary.web.Answers;

/** What the pages ask and show of one trip. */
@Component
class TripKind extends MoneyKind<Trip, TripForm> {

    private static final BigDecimal MOST_MILES = new BigDecimal("99999999.9");
    private static final int MILE_DECIMALS = 1;

    private final TripRates rates;

    TripKind(MoneyDesk desk, TripRates rates) {
        super(desk, Trip.class, "trips");
        this.rates = rates;
    }

    @Override
    TripForm blank() {
        return new TripForm();
    }

    @Override
    TripForm form(Trip trip) {
        TripForm form = new TripForm();
        form.startPlace = trip.startPlace();
        form.destination = trip.destination();
        form.purpose = trip.purpose();
        form.miles = trip.miles().stripTrailingZeros().toPlainString();
        form.rate = rates.isDated(trip.rateTenths(), trip.date()) ? "" : rates.typed(trip.rateTenths());
        return form;
    }

    @Override
    Trip read(Facts facts, TripForm form, Answers answers) {
        return new Trip(
                facts.id(),
                facts.date(),
                facts.note(),
                answers.text("purpose", form.purpose, 200, "spending.error.purpose"),
                answers.text("startPlace", form.startPlace, 120, "spending.error.start"),
                answers.text("destination", form.destination, 120, "spending.error.destination"),
                miles(form, answers),
                rate(facts.date(), form, answers));
    }

    @Override
    void rewrite(Trip stored, Trip typed) {
        stored.rewrite(
                typed.date(),
                typed.note(),
                typed.purpose(),
                typed.startPlace(),
                typed.destination(),
                typed.miles(),
                typed.rateTenths());
    }

    @Override
    void furnish(Model model, TripForm form) {
        model.addAttribute("rates", rates.known());
        model.addAttribute("amount", worth(form));
        model.addAttribute("dated", day(form).flatMap(rates::on).orElse(null));
    }

    @Override
    String keeps(UUID id) {
        return desk.book.receiptsOfTrip(id) > 0 ? "spending.trip.has-receipts" : "";
    }

    private BigDecimal miles(TripForm form, Answers answers) {
        Optional<BigDecimal> typed =
                answers.decimal("miles", form.miles, "spending.error.miles").map(BigDecimal::stripTrailingZeros);
        if (typed.isEmpty() && form.miles.isBlank()) {
            answers.wrong("miles", "spending.error.miles");
        }
        BigDecimal miles = typed.orElse(BigDecimal.ONE);
        if (miles.signum() <= 0 || miles.compareTo(MOST_MILES) > 0 || miles.scale() > MILE_DECIMALS) {
            answers.wrong("miles", "spending.error.miles");
        }
        return miles;
    }

    private int rate(LocalDate date, TripForm form, Answers answers) {
        if (form.rate.isBlank()) {
            Optional<MileageRate> dated = rates.on(date);
            if (dated.isEmpty() && !form.date.isBlank()) {
                answers.wrong("rate", "spending.error.no-rate");
            }
            return dated.map(TripRates::tenths).orElse(0);
        }
        Optional<Integer> tenths =
                answers.decimal("rate", form.rate, "spending.error.rate").flatMap(rates::tenthsOf);
        if (tenths.isEmpty()) {
            answers.wrong("rate", "spending.error.rate");
        }
        return tenths.orElse(0);
    }

    /** What a stored trip comes to; nothing while the form cannot be read. */
    private @org.jspecify.annotations.Nullable Amount worth(TripForm form) {
        try {
            Trip trip = desk.book.find(Trip.class, UUID.fromString(form.id));
            return trip.cost();
        } catch (patinary.web.NotFound | IllegalArgumentException notStored) {
            return null;
        }
    }

    private static Optional<LocalDate> day(TripForm form) {
        try {
            return Optional.of(LocalDate.parse(form.date));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
