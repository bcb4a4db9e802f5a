package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
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
import patinary.web.NotFound;
import patinary.web.Notice;

/** Her own ways of packing. */
@Controller
@RequestMapping("/parcels")
class ParcelController {

    private static final int NAME = 80;
    private static final UUID NO_SALE = new UUID(0, 0);

    private final ParcelBook parcels;
    private final WrapAnswers reader;
    private final WrapDesk desk;
    private final CurrentShop shop;

    ParcelController(ParcelBook parcels, WrapAnswers reader, WrapDesk desk, CurrentShop shop) {
        this.parcels = parcels;
        this.reader = reader;
        this.desk = desk;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", parcels.all());
        return "selling/parcels";
    }

    @GetMapping("/new")
    String blank(Model model) {
        ParcelForm form = new ParcelForm();
        form.id = UUID.randomUUID().toString();
        return page(form, "/parcels/new", model);
    }

    @GetMapping("/{id}")
    String edit(@PathVariable UUID id, Model model) {
        ParcelBook.Kept kept = parcels.find(id).orElseThrow(() -> new NotFound("Parcel " + id));
        ParcelForm form = new ParcelForm();
        form.id = id.toString();
        form.version = kept.version();
        form.name = kept.name();
        form.wraps.addAll(kept.wraps());
        model.addAttribute("id", id);
        return page(form, "/parcels/" + id, model);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") ParcelForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return act(FormId.read(form.id), form, errors, act, "/parcels/new", model, response, redirect);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") ParcelForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        parcels.find(id).orElseThrow(() -> new NotFound("Parcel " + id));
        model.addAttribute("id", id);
        return act(id, form, errors, act, "/parcels/" + id, model, response, redirect);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        parcels.remove(id);
        Notice.next(redirect, "selling.parcel.removed");
        return "redirect:/parcels";
    }

    private String act(
            UUID id,
            ParcelForm form,
            BindingResult errors,
            String act,
            String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (!act.equals("save")) {
            desk.act(form.wraps, act, null, NO_SALE);
            return page(form, action, model);
        }
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "selling.error.parcel-name");
        if (parcels.isNameTaken(name, id)) {
            answers.wrong("name", "selling.error.parcel-name-taken");
        }
        List<Wrap> read = reader.read(form.wraps, answers, shop.today());
        if (read.isEmpty() && !answers.anyWrong()) {
            answers.wrong("name", "selling.error.parcel-empty");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, action, model);
        }
        parcels.save(
                id,
                form.version,
                name,
                read.stream().map(ParcelController::kept).toList());
        Notice.next(redirect, "selling.parcel.saved", name);
        return "redirect:/parcels";
    }

    private static ParcelWrap kept(Wrap wrap) {
        return new ParcelWrap(wrap.line(), wrap.supplyId(), wrap.typed(), wrap.estimated());
    }

    private String page(ParcelForm form, String action, Model model) {
        desk.show(model, form.wraps, null, NO_SALE);
        // A way of packing is not made of another one.
        model.addAttribute("ways", List.of());
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        return "selling/parcel";
    }
}
