package patinary.spending;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The vehicles of the shop. */
@Controller
@RequestMapping("/vehicles")
class VehicleController {

    private static final String HOME = "redirect:/vehicles";
    private static final int NAME = 80;
    private static final int NOTE = 2000;

    private final Vehicles vehicles;
    private final CurrentShop shop;

    VehicleController(Vehicles vehicles, CurrentShop shop) {
        this.vehicles = vehicles;
        this.shop = shop;
    }

    /** The vehicles with the miles of a year; of this one where none is asked for. */
    @GetMapping
    String list(@RequestParam(required = false) Integer year, Model model) {
        int now = shop.today().getYear();
        int shown = year == null || year < OdometerController.FIRST || year > now ? now : year;
        model.addAttribute("year", shown);
        model.addAttribute("now", now);
        model.addAttribute("rows", vehicles.year(shown));
        return "spending/vehicles";
    }

    @GetMapping("/new")
    String fresh(Model model) {
        VehicleForm form = new VehicleForm();
        form.id = UUID.randomUUID().toString();
        return page(model, form, true);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") VehicleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Vehicle typed = read(form, errors, Ids.read(form.id).orElseGet(UUID::randomUUID));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, true);
        }
        vehicles.add(typed);
        Notice.next(redirect, "spending.vehicle.saved");
        return HOME;
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, Model model) {
        Vehicle vehicle = find(id);
        VehicleForm form = new VehicleForm();
        form.id = id.toString();
        form.version = vehicle.version();
        form.name = vehicle.name();
        form.inService = vehicle.inService() == null ? "" : vehicle.inService().toString();
        form.note = vehicle.note();
        return page(model, form, false);
    }

    @PostMapping(Ids.PATH)
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") VehicleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        form.id = id.toString();
        Vehicle typed = read(form, errors, id);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(model, form, false);
        }
        vehicles.change(typed);
        Notice.next(redirect, "spending.vehicle.saved");
        return HOME;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        find(id);
        boolean gone = vehicles.remove(id);
        Notice.next(redirect, gone ? "spending.vehicle.removed" : "spending.vehicle.has-trips");
        return gone ? HOME : HOME + "/" + id;
    }

    private Vehicle read(VehicleForm form, BindingResult errors, UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "spending.error.vehicle-name");
        if (vehicles.isTaken(id, name)) {
            answers.wrong("name", "spending.error.vehicle-taken");
        }
        return new Vehicle(
                id,
                name,
                answers.optionalDate("inService", form.inService).orElse(null),
                answers.note("note", form.note, NOTE),
                form.version);
    }

    private Vehicle find(UUID id) {
        return vehicles.find(id).orElseThrow(() -> new NotFound("vehicle " + id));
    }

    private static String page(Model model, VehicleForm form, boolean fresh) {
        model.addAttribute("form", form);
        model.addAttribute("fresh", fresh);
        return "spending/vehicle";
    }
}
