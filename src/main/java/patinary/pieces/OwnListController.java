package patinary.pieces;

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

/** The pages of her styles and kinds. */
@Controller
@RequestMapping("/pieces/{list:styles|kinds}")
class OwnListController {

    static final int NAME = 120;

    private final OwnLists lists;
    private final CurrentShop shop;

    OwnListController(OwnLists lists, CurrentShop shop) {
        this.lists = lists;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable String list, Model model) {
        model.addAttribute("form", new NameForm());
        return page(OwnList.called(list), model);
    }

    @PostMapping
    String add(
            @PathVariable String list,
            @ModelAttribute("form") NameForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        OwnList own = OwnList.called(list);
        String name = read(own, form, "", errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(own, model);
        }
        lists.addAlone(own, name);
        Notice.next(redirect, "pieces.list.added", name);
        return "redirect:/pieces/" + own.word();
    }

    @GetMapping(Ids.PATH)
    String one(@PathVariable String list, @PathVariable UUID id, Model model) {
        OwnList own = OwnList.called(list);
        OwnLists.Row row = find(own, id);
        NameForm form = new NameForm();
        form.version = row.version();
        form.name = row.name();
        form.area = PieceForm.area(row.area());
        model.addAttribute("form", form);
        return onePage(own, row, model);
    }

    @PostMapping(Ids.PATH)
    String rename(
            @PathVariable String list,
            @PathVariable UUID id,
            @ModelAttribute("form") NameForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        OwnList own = OwnList.called(list);
        OwnLists.Row row = find(own, id);
        String name = read(own, form, row.name(), errors);
        BigDecimal area = area(own, form, row, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return onePage(own, row, model);
        }
        lists.change(own, id, form.version, name, area);
        Notice.next(redirect, "pieces.list.renamed", name);
        return "redirect:/pieces/" + own.word();
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable String list, @PathVariable UUID id, RedirectAttributes redirect) {
        OwnList own = OwnList.called(list);
        String name = find(own, id).name();
        Notice.next(redirect, lists.remove(own, id) ? "pieces.list.removed" : "pieces.list.used", name);
        return "redirect:/pieces/" + own.word();
    }

    private String read(OwnList own, NameForm form, String now, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "pieces.error.name");
        if (!name.equalsIgnoreCase(now) && lists.called(own, name).isPresent()) {
            answers.wrong("name", "pieces.error.name-taken");
        }
        return name;
    }

    private @Nullable BigDecimal area(OwnList own, NameForm form, OwnLists.Row row, BindingResult errors) {
        SurfaceReading.Surface stored = new SurfaceReading.Surface(row.area(), null);
        return own.hasAreas()
                ? new SurfaceReading(new Answers(errors, shop.currency()), stored)
                        .read(form.area, form.shape, form.measures)
                        .area()
                : null;
    }

    private OwnLists.Row find(OwnList own, UUID id) {
        return lists.find(own, id).orElseThrow(() -> new NotFound(own + " " + id));
    }

    private String page(OwnList own, Model model) {
        model.addAttribute("list", own.word());
        model.addAttribute("rows", lists.rows(own));
        return "pieces/list-of-names";
    }

    private static String onePage(OwnList own, OwnLists.Row row, Model model) {
        model.addAttribute("list", own.word());
        model.addAttribute("row", row);
        model.addAttribute("shapes", SurfaceReading.shapes());
        return "pieces/one-name";
    }
}
