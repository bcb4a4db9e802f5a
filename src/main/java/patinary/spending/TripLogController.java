package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.Notice;
import patinary.web.Window;

/** The log of trips, and trips over saved ways with one tap. */
@Controller
@RequestMapping("/trips")
class TripLogController {

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 9999;

    private final TripLog log;
    private final SavedWays ways;
    private final Vehicles vehicles;
    private final TripRates rates;
    private final MoneyDesk desk;

    TripLogController(TripLog log, SavedWays ways, Vehicles vehicles, TripRates rates, MoneyDesk desk) {
        this.log = log;
        this.ways = ways;
        this.vehicles = vehicles;
        this.rates = rates;
        this.desk = desk;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String vehicle,
            @RequestParam(required = false) @Nullable Integer year,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        Integer within = year == null || year < FIRST_YEAR || year > LAST_YEAR ? null : year;
        TripLog.Wanted wanted = new TripLog.Wanted(q.strip(), Ids.read(vehicle).orElse(null), within);
        WayTripForm form = new WayTripForm();
        form.id = UUID.randomUUID().toString();
        form.date = desk.shop.today().toString();
        return page(form, wanted, Window.of(page), model);
    }

    /** Records a trip over a saved way; sent twice it is recorded once. */
    @PostMapping
    String drive(
            @ModelAttribute("form") WayTripForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, desk.shop.currency());
        UUID id = answers.id("", form.id, "spending.error.form");
        LocalDate date = answers.date("date", form.date);
        Optional<SavedWay> way = Ids.read(form.way).flatMap(ways::find);
        Optional<MileageRate> rate = rates.on(date);
        if (way.isEmpty()) {
            answers.wrong("", "spending.error.way");
        }
        if (rate.isEmpty() && !errors.hasFieldErrors("date")) {
            answers.wrong("date", "spending.error.no-rate-of-day");
        }
        if (!answers.anyWrong() && recorded(trip(id, date, form, way.orElseThrow(), rate.orElseThrow()), errors)) {
            Notice.next(redirect, "spending.trip.driven", way.orElseThrow().destination());
            return "redirect:/trips/" + id;
        }
        response.setStatus(422);
        return page(form, new TripLog.Wanted("", null, null), Window.of(1), model);
    }

    private Trip trip(UUID id, LocalDate date, WayTripForm form, SavedWay way, MileageRate rate) {
        return new Trip(
                id,
                date,
                "",
                way.purpose(),
                way.startPlace(),
                way.destination(),
                way.miles(form.oneWay),
                TripRates.tenths(rate),
                Ids.read(form.vehicle).flatMap(vehicles::find).map(Vehicle::id).orElse(null));
    }

    private boolean recorded(Trip trip, BindingResult errors) {
        try {
            desk.book.record(trip);
            return true;
        } catch (Refused refused) {
            desk.refusal.tell(errors, refused);
            return false;
        }
    }

    private String page(WayTripForm form, TripLog.Wanted wanted, Window window, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("wanted", wanted);
        model.addAttribute("rows", log.rows(wanted, window));
        model.addAttribute("totals", log.totals(wanted));
        model.addAttribute("ways", ways.all());
        model.addAttribute("vehicles", vehicles.choices());
        model.addAttribute(
                "years",
                log.years().stream()
                        .map(known -> Choice.named(known.toString(), known.toString()))
                        .toList());
        return "spending/trip-log";
    }
}
