package patinary.shop;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import patinary.web.Ids;
import patinary.web.Notice;

/** The owner's page of who may come in. */
@Controller
@RequestMapping("/shop/people")
class PeopleController {

    private static final String BACK = "redirect:/shop/people";

    private final PeopleDesk desk;

    PeopleController(PeopleDesk desk) {
        this.desk = desk;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("form", new PersonForm());
        return page(model);
    }

    @PostMapping
    String add(
            @ModelAttribute("form") PersonForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        check(form, null, errors);
        if (!errors.hasErrors()) {
            try {
                tell(redirect, form.name, desk.add(form.name));
                Notice.next(redirect, "people.added", form.name);
                return BACK;
            } catch (DataIntegrityViolationException taken) {
                errors.rejectValue("name", "people.error.taken");
            }
        }
        response.setStatus(422);
        return page(model);
    }

    @GetMapping(Ids.PATH)
    String one(@PathVariable UUID id, Model model) {
        Person helper = desk.helper(id);
        PersonForm form = new PersonForm();
        form.name = helper.name;
        form.version = helper.version;
        model.addAttribute("form", form);
        return onePage(id, model);
    }

    @PostMapping(Ids.PATH)
    String rename(
            @PathVariable UUID id,
            @ModelAttribute("form") PersonForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        check(form, id, errors);
        if (!errors.hasErrors()) {
            try {
                desk.rename(id, form.version, form.name);
                Notice.next(redirect, "people.renamed", form.name);
                return BACK;
            } catch (DataIntegrityViolationException taken) {
                errors.rejectValue("name", "people.error.taken");
            }
        }
        response.setStatus(422);
        return onePage(id, model);
    }

    @PostMapping(Ids.PATH + "/way-in")
    String newWayIn(@PathVariable UUID id, RedirectAttributes redirect) {
        String name = desk.helper(id).name;
        tell(redirect, name, desk.newWayIn(id));
        return BACK;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        Notice.next(redirect, "people.removed", desk.remove(id));
        return BACK;
    }

    private void check(PersonForm form, @Nullable UUID id, BindingResult errors) {
        new Answers(errors).text("name", form.name, Answers.NAME, "people.error.name");
        if (!errors.hasErrors() && desk.isTaken(form.name, id)) {
            errors.rejectValue("name", "people.error.taken");
        }
    }

    private static void tell(RedirectAttributes redirect, String name, String code) {
        redirect.addFlashAttribute("given", new WaysIn.Given(name, code));
    }

    private String page(Model model) {
        model.addAttribute("people", desk.all());
        model.addAttribute(
                "address",
                ServletUriComponentsBuilder.fromCurrentContextPath()
                        .path("/way-in")
                        .toUriString());
        return "shop/people";
    }

    private String onePage(UUID id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("person", desk.helper(id).name);
        return "shop/person";
    }
}
