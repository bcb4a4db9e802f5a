package patinary.spending;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;

/** What the pages ask and show of one trip. */
@Component
class TripKind extends MoneyKind<Trip, TripForm> {

    static final int PURPOSE = 200;
    static final int PLACE = 120;

    private final TripRates rates;
    private final TripLog log;
    private final SavedWays ways;
    private final Vehicles vehicles;

    TripKind(MoneyDesk desk, TripRates rates, TripLog log, SavedWays ways, Vehicles vehicles) {
        super(desk, Trip.class, "trips");
        this.rates = rates;
        this.log = log;
        this.ways = ways;
        this.vehicles = vehicles;
    }

    @Override
    String home() {
        return "/trips";
    }

    /** A saved way fills in all but what the person knows better. */
    @Override
    void prefill(TripForm form, Map<String, String> asked) {
        Ids.read(asked.get("way")).flatMap(ways::find).ifPresent(way -> {
            form.startPlace = way.startPlace();
            form.destination = way.destination();
            form.purpose = way.purpose();
            form.miles = Miles.plain(way.miles(false));
        });
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
        form.miles = Miles.plain(trip.miles());
        form.vehicle = trip.vehicleId() == null ? "" : trip.vehicleId().toString();
        form.rate = rates.isDated(trip.rateTenths(), trip.date()) ? "" : rates.typed(trip.rateTenths());
        return form;
    }

    @Override
    Trip read(Facts facts, TripForm form, Answers answers) {
        return new Trip(
                facts.id(),
                facts.date(),
                facts.note(),
                answers.text("purpose", form.purpose, PURPOSE, "spending.error.purpose"),
                answers.text("startPlace", form.startPlace, PLACE, "spending.error.start"),
                answers.text("destination", form.destination, PLACE, "spending.error.destination"),
                Miles.aboveZero(answers, "miles", form.miles, "spending.error.miles"),
                rate(facts.date(), form, answers),
                vehicle(form, answers));
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
                typed.rateTenths(),
                typed.vehicleId());
    }

    @Override
    void furnish(Model model, TripForm form) {
        model.addAttribute("rates", rates.known());
        model.addAttribute("vehicles", vehicles.choices());
        model.addAttribute("dated", day(form).flatMap(rates::on).orElse(null));
        Optional<Trip> stored = stored(form);
        model.addAttribute("amount", stored.map(Trip::cost).orElse(null));
        model.addAttribute(
                "share", stored.map(trip -> log.share(trip.id(), trip.cost())).orElse(null));
        model.addAttribute("bought", stored.map(trip -> log.bought(trip.id())).orElse(List.of()));
        model.addAttribute(
                "without", stored.map(trip -> log.without(trip.date())).orElse(List.of()));
    }

    @Override
    String keeps(UUID id) {
        return desk.book.receiptsOfTrip(id) > 0 ? "spending.trip.has-receipts" : "";
    }

    private @Nullable UUID vehicle(TripForm form, Answers answers) {
        Optional<Vehicle> vehicle = Ids.read(form.vehicle).flatMap(vehicles::find);
        if (vehicle.isEmpty() && !form.vehicle.isBlank()) {
            answers.wrong("vehicle", "spending.error.vehicle");
        }
        return vehicle.map(Vehicle::id).orElse(null);
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

    /** The stored trip that the form changes; nothing while it is a new one. */
    private Optional<Trip> stored(TripForm form) {
        try {
            return Ids.read(form.id).map(id -> desk.book.find(Trip.class, id));
        } catch (NotFound notStoredYet) {
            return Optional.empty();
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
