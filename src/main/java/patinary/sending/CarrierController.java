package patinary.sending;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.QuantityWords;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Her own table of what carriers take. */
@Controller
@RequestMapping("/carriers")
class CarrierController {

    private static final int NAME = 80;
    /** As many rows are drawn empty below those there are. */
    private static final int EMPTY = 3;

    private final Carriers carriers;
    private final PaidFrom places;
    private final CurrentShop shop;

    CarrierController(Carriers carriers, PaidFrom places, CurrentShop shop) {
        this.carriers = carriers;
        this.places = places;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", carriers.all());
        return "sending/carriers";
    }

    @GetMapping("/new")
    String blank(Model model) {
        CarrierForm form = new CarrierForm();
        form.id = UUID.randomUUID().toString();
        return page(form, model);
    }

    @GetMapping(Ids.PATH)
    String edit(@PathVariable UUID id, Model model) {
        Carrier carrier = carriers.find(id).orElseThrow(() -> new NotFound("Carrier " + id));
        CarrierForm form = new CarrierForm();
        form.id = id.toString();
        form.version = carrier.version();
        form.name = carrier.name();
        form.place = carrier.placeId().toString();
        carrier.rows().forEach(row -> form.lines.add(line(row)));
        return page(form, model);
    }

    /** @param act {@code save}, or {@code more} for more rows to fill in, which stores nothing */
    @PostMapping
    String save(
            @ModelAttribute("form") CarrierForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (act.equals("more")) {
            return page(form, model);
        }
        Answers answers = new Answers(errors, shop.currency());
        Carrier read = read(form, answers);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, model);
        }
        carriers.save(read);
        Notice.next(redirect, "sending.carrier.saved", read.name());
        return "redirect:/carriers";
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        carriers.remove(id);
        Notice.next(redirect, "sending.carrier.removed");
        return "redirect:/carriers";
    }

    private Carrier read(CarrierForm form, Answers answers) {
        UUID id = Ids.read(form.id).orElseGet(UUID::randomUUID);
        String name = answers.text("name", form.name, NAME, "sending.error.carrier-name");
        if (carriers.all().stream()
                .anyMatch(other ->
                        other.name().equalsIgnoreCase(name) && !other.id().equals(id))) {
            answers.wrong("name", "sending.error.carrier-name-taken");
        }
        UUID place = places.read(answers, "place", form.place);
        List<Carrier.Row> rows = new ArrayList<>();
        for (int i = 0; i < form.lines.size(); i++) {
            if (!form.lines.get(i).isBlank()) {
                rows.add(row(id, form.lines.get(i), "lines[" + i + "].", answers));
            }
        }
        return new Carrier(id, name, place, form.version, rows);
    }

    private Carrier.Row row(UUID id, CarrierForm.Line line, String at, Answers answers) {
        LocalDate from = answers.date(at + "from", line.from);
        Optional<BigDecimal> upTo = Measured.weight(answers, at + "upTo", line.upTo);
        if (line.upTo.isBlank()) {
            answers.wrong(at + "upTo", "sending.error.up-to");
        }
        String size = Measured.size(answers, at + "size", line.size);
        Amount cost = answers.amount(at + "cost", line.cost);
        return new Carrier.Row(id, from, upTo.orElse(BigDecimal.ONE), size, cost.minor());
    }

    private CarrierForm.Line line(Carrier.Row row) {
        CarrierForm.Line line = new CarrierForm.Line();
        line.from = row.validFrom().toString();
        line.upTo = QuantityWords.typed(row.upToG(), Dimension.MASS);
        line.size = row.upToSize();
        line.cost = shop.currency().plain(Amount.of(row.costMinor()));
        return line;
    }

    private String page(CarrierForm form, Model model) {
        for (int i = 0; i < EMPTY; i++) {
            CarrierForm.Line line = new CarrierForm.Line();
            line.from = shop.today().toString();
            form.lines.add(line);
        }
        Ids.read(form.id).flatMap(carriers::find).ifPresent(known -> model.addAttribute("known", known));
        model.addAttribute("form", form);
        model.addAttribute("places", places.choices());
        return "sending/carrier";
    }
}
