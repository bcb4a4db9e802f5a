package patinary.taxyear;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.springframework.security.access.AccessDeniedException;
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
import patinary.taxyear.TaxMapping.Goes;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What goes on which line in a year, and changing it; only the owner changes it. */
@Controller
@RequestMapping("/year/{year:[0-9]{4}}/lines")
class LineController {

    private static final String ONE = "one";
    private static final String ONWARD = "onward";
    private static final List<Choice> YEARS =
            List.of(Choice.said(ONE, "taxyear.lines.years.one"), Choice.said(ONWARD, "taxyear.lines.years.onward"));

    private final LineBook book;

    LineController(LineBook book) {
        this.book = book;
    }

    @GetMapping
    String list(@PathVariable int year, Model model) {
        YearController.require(year);
        model.addAttribute("year", year);
        model.addAttribute("choices", book.choices(year));
        model.addAttribute("sealed", book.sealed(year));
        return "taxyear/lines";
    }

    @GetMapping("/change")
    String ask(
            @PathVariable int year,
            @RequestParam(defaultValue = "") String account,
            @RequestParam(defaultValue = "") String category,
            Model model) {
        LineChoice what = what(year, account, category);
        LineForm form = new LineForm();
        form.account = account;
        form.category = category;
        form.line = what.line() == null ? Goes.NOWHERE.name() : what.meaning();
        model.addAttribute("form", form);
        return page(year, what, model);
    }

    @PostMapping("/change")
    String put(
            @PathVariable int year,
            @ModelAttribute("form") LineForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        owner(request);
        LineChoice what = what(year, form.account, form.category);
        Goes goes = goes(form.line);
        if (goes == Goes.LINE
                && book.lines(year).stream().noneMatch(line -> line.meaning().equals(form.line))) {
            errors.rejectValue("line", "taxyear.lines.error.line");
        }
        if (!form.years.equals(ONE) && !form.years.equals(ONWARD)) {
            errors.rejectValue("years", "taxyear.lines.error.years");
        }
        if (!errors.hasErrors()) {
            if (book.put(year, what, goes, goes == Goes.LINE ? form.line : "", form.years.equals(ONWARD))) {
                Notice.next(redirect, "taxyear.lines.done", String.valueOf(year));
                return "redirect:/year/" + year + "/lines";
            }
            errors.reject("taxyear.lines.error.sealed");
        }
        response.setStatus(422);
        return page(year, what, model);
    }

    @PostMapping("/back")
    String back(
            @PathVariable int year,
            @RequestParam(defaultValue = "") String account,
            @RequestParam(defaultValue = "") String category,
            HttpServletRequest request,
            RedirectAttributes redirect) {
        owner(request);
        what(year, account, category);
        return told(year, book.takeBack(year, account, category), redirect);
    }

    @PostMapping("/supplied")
    String supplied(@PathVariable int year, HttpServletRequest request, RedirectAttributes redirect) {
        owner(request);
        YearController.require(year);
        return told(year, book.asSupplied(year), redirect);
    }

    private static String told(int year, boolean done, RedirectAttributes redirect) {
        Notice.next(redirect, done ? "taxyear.lines.back.done" : "taxyear.lines.error.sealed", String.valueOf(year));
        return "redirect:/year/" + year + "/lines";
    }

    private String page(int year, LineChoice what, Model model) {
        List<Choice> lines = new ArrayList<>();
        lines.add(Choice.said(Goes.SUPPLIED.name(), "taxyear.lines.supplied"));
        lines.add(Choice.said(Goes.NOWHERE.name(), "taxyear.lines.nowhere"));
        book.lines(year).forEach(line -> lines.add(Choice.named(line.meaning(), line.line() + " – " + line.named())));
        model.addAttribute("year", year);
        model.addAttribute("what", what);
        model.addAttribute("lines", lines);
        model.addAttribute("yearChoices", YEARS);
        model.addAttribute(
                "said", book.said(year, what.account(), what.category()).orElse(null));
        model.addAttribute("sealed", book.sealed(year));
        return "taxyear/line-change";
    }

    private LineChoice what(int year, String account, String category) {
        YearController.require(year);
        return book.choice(year, account, category)
                .filter(choice -> !choice.fixed())
                .orElseThrow(() -> new NotFound("what goes on a line: " + account + " " + category));
    }

    private static Goes goes(String line) {
        return switch (line) {
            case "SUPPLIED" -> Goes.SUPPLIED;
            case "NOWHERE" -> Goes.NOWHERE;
            default -> Goes.LINE;
        };
    }

    private static void owner(HttpServletRequest request) {
        if (!request.isUserInRole("OWNER")) {
            throw new AccessDeniedException("Only the owner changes what goes on which line");
        }
    }
}
