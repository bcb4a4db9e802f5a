package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
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
import patinary.web.NotFound;
import patinary.web.Notice;

/** The supply lines. */
@Controller
@RequestMapping("/supplies/lines")
class SupplyLineController {

    /** A line, as typed. */
    static class LineForm {
        public long version;
        public String name = "";
        public String maker = "";
    }

    /** A line with the number of its supplies. */
    record Row(UUID id, String name, String maker, long supplies) {}

    private static final int NAME = 120;

    private final SupplyLines lines;
    private final SupplyKeeping keeping;
    private final CurrentShop shop;
    private final JdbcClient jdbc;

    SupplyLineController(SupplyLines lines, SupplyKeeping keeping, CurrentShop shop, JdbcClient jdbc) {
        this.lines = lines;
        this.keeping = keeping;
        this.shop = shop;
        this.jdbc = jdbc;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("form", new LineForm());
        return listPage(model);
    }

    @PostMapping
    String add(
            @ModelAttribute("form") LineForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (isWrong(form, errors, null)) {
            response.setStatus(422);
            return listPage(model);
        }
        keeping.saveLine(UUID.randomUUID(), form.name, form.maker, 0);
        Notice.next(redirect, "supplies.lines.saved", form.name);
        return "redirect:/supplies/lines";
    }

    @GetMapping("/{id}")
    String edit(@PathVariable UUID id, Model model) {
        SupplyLine line = find(id);
        LineForm form = new LineForm();
        form.version = line.version();
        form.name = line.name();
        form.maker = line.maker();
        model.addAttribute("form", form);
        return linePage(model, id);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") LineForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        if (isWrong(form, errors, id)) {
            response.setStatus(422);
            return linePage(model, id);
        }
        keeping.saveLine(id, form.name, form.maker, form.version);
        Notice.next(redirect, "supplies.lines.saved", form.name);
        return "redirect:/supplies/lines";
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String name = find(id).name();
        Notice.next(redirect, keeping.removeLine(id) ? "supplies.removed" : "supplies.lines.not-removed", name);
        return "redirect:/supplies/lines";
    }

    private boolean isWrong(LineForm form, BindingResult errors, @Nullable UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        answers.text("name", form.name, NAME, "supplies.error.line-name-missing");
        answers.note("maker", form.maker, NAME);
        if (keeping.isLineNameTaken(form.name, id)) {
            answers.wrong("name", "supplies.error.line-taken");
        }
        return answers.anyWrong();
    }

    private SupplyLine find(UUID id) {
        return lines.findById(id).orElseThrow(() -> new NotFound("supply line " + id));
    }

    private String listPage(Model model) {
        List<Row> rows = jdbc.sql("""
                        select l.id, l.name, l.maker,
                               (select count(*) from supply s where s.supply_line_id = l.id) as supplies
                        from supply_line l order by lower(l.name), l.id
                        """).query(Row.class).list();
        model.addAttribute("rows", rows);
        return "supplies/lines";
    }

    private String linePage(Model model, UUID id) {
        model.addAttribute("id", id);
        model.addAttribute("unused", supplyCount(id) == 0);
        return "supplies/line";
    }

    private long supplyCount(UUID id) {
        return jdbc.sql("select count(*) from supply where supply_line_id = ?")
                .param(id)
                .query(Long.class)
                .single();
    }
}
