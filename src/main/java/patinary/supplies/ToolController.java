package patinary.supplies;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.ledger.StockPlace;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** "Worn out": a count of a tool, with one tap; and how many uses the next one is thought to last. */
@Controller
@RequestMapping("/supplies/{supply}")
class ToolController {

    private static final int MOST = 1000;

    private final SupplyPage page;
    private final SupplyDocuments documents;
    private final MeasureChanges changes;
    private final CurrentShop shop;
    private final Refusal refusal;

    ToolController(
            SupplyPage page, SupplyDocuments documents, MeasureChanges changes, CurrentShop shop, Refusal refusal) {
        this.page = page;
        this.documents = documents;
        this.changes = changes;
        this.shop = shop;
        this.refusal = refusal;
    }

    /** What is left of it is shared over its uses, or wasted, as any count does. */
    @PostMapping("/worn-out")
    String wornOut(
            @PathVariable UUID supply,
            @ModelAttribute("worn") WornForm worn,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SupplyCatalog.Known known = page.find(supply);
        page.tool(known);
        Answers answers = new Answers(errors, shop.currency());
        UUID id = answers.id("id", worn.id, "supplies.error.form-id");
        Optional<Integer> left = answers.whole("left", worn.left).filter(number -> number >= 0 && number <= MOST);
        if (left.isEmpty()) {
            answers.wrong("left", "supplies.error.tools-left");
        }
        if (!answers.anyWrong()
                && isCounted(
                        new SupplyCount(
                                        id,
                                        shop.today(),
                                        "",
                                        supply,
                                        StockPlace.BENCH,
                                        BigDecimal.valueOf(left.orElseThrow()))
                                .asWaste(worn.how.equals("WASTE")),
                        errors)) {
            Notice.next(redirect, "supplies.tool.settled", known.facts().name());
            return "redirect:/supplies/" + supply;
        }
        response.setStatus(422);
        return page.show(supply, null, worn, model);
    }

    /** The number is reckoned anew, so that nothing that a page says can become one. */
    @PostMapping("/lasts")
    String lasts(@PathVariable UUID supply, RedirectAttributes redirect) {
        Integer better = page.tool(page.find(supply)).better();
        boolean done = better != null && changes.correct(supply, ToolUse.MEASURE, ToolUse.size(better), shop.today());
        Notice.next(redirect, done ? "supplies.tool.corrected" : "supplies.tool.not-corrected");
        return "redirect:/supplies/" + supply;
    }

    @PostMapping("/lasts/undo")
    String undo(
            @PathVariable UUID supply,
            @RequestParam @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate from,
            RedirectAttributes redirect) {
        page.find(supply);
        boolean done = changes.undo(supply, ToolUse.MEASURE, from);
        Notice.next(redirect, done ? "supplies.tool.undone" : "supplies.tool.not-undone");
        return "redirect:/supplies/" + supply;
    }

    private boolean isCounted(SupplyCount count, BindingResult errors) {
        try {
            documents.record(SupplyCount.class, count);
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }
}
