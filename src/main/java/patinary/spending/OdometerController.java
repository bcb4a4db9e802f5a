package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What an odometer read on the first and the last day of a year. */
@Controller
@RequestMapping("/vehicles" + Ids.PATH + "/{year:[0-9]{4}}")
class OdometerController {

    static final int FIRST = 1900;

    private static final String ERROR = "spending.error.odometer";

    private final Vehicles vehicles;
    private final CurrentShop shop;

    OdometerController(Vehicles vehicles, CurrentShop shop) {
        this.vehicles = vehicles;
        this.shop = shop;
    }

    /** Where nothing was read yet, the year begins with what the last one ended with. */
    @GetMapping
    String show(@PathVariable UUID id, @PathVariable int year, Model model) {
        require(id, year);
        OdometerForm form = new OdometerForm();
        vehicles.reading(id, year)
                .ifPresentOrElse(
                        read -> {
                            form.version = read.version();
                            form.start = Miles.plain(read.startReading());
                            form.end = Miles.plain(read.endReading());
                            form.commuting = Miles.plain(read.commutingMiles());
                        },
                        () -> form.start = vehicles.reading(id, year - 1)
                                .map(before -> Miles.plain(before.endReading()))
                                .orElse(""));
        return page(id, year, form, model);
    }

    @PostMapping
    String keep(
            @PathVariable UUID id,
            @PathVariable int year,
            @ModelAttribute("form") OdometerForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        require(id, year);
        Answers answers = new Answers(errors, shop.currency());
        BigDecimal start = Miles.optional(answers, "start", form.start, ERROR);
        BigDecimal end = Miles.optional(answers, "end", form.end, ERROR);
        BigDecimal commuting = Miles.optional(answers, "commuting", form.commuting, ERROR);
        if (isBefore(end, start)) {
            answers.wrong("end", "spending.error.odometer-back");
        }
        if (answers.anyWrong()) {
            response.setStatus(422);
            return page(id, year, form, model);
        }
        vehicles.keep(new Vehicles.Reading(id, year, start, end, commuting, form.version));
        Notice.next(redirect, "spending.odometer.saved");
        return "redirect:/vehicles?year=" + year;
    }

    private String page(UUID id, int year, OdometerForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("vehicle", find(id));
        model.addAttribute("year", year);
        return "spending/odometer";
    }

    private void require(UUID id, int year) {
        find(id);
        if (year < FIRST) {
            throw new NotFound("year " + year);
        }
    }

    private Vehicle find(UUID id) {
        return vehicles.find(id).orElseThrow(() -> new NotFound("vehicle " + id));
    }

    private static boolean isBefore(@Nullable BigDecimal end, @Nullable BigDecimal start) {
        return end != null && start != null && end.compareTo(start) < 0;
    }
}
