package patinary.sending;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Page;
import patinary.web.Window;

/** The list of what to pack and send, with a tap for each step. */
@Controller
@RequestMapping("/sending")
class SendingController {

    private static final String LIST = "redirect:/sending";

    private final SendingList list;
    private final Sendings sendings;
    private final CurrentShop shop;

    SendingController(SendingList list, Sendings sendings, CurrentShop shop) {
        this.list = list;
        this.sendings = sendings;
        this.shop = shop;
    }

    @GetMapping
    String show(@RequestParam(required = false) @Nullable Integer page, Model model) {
        Page<ToSend> rows = list.waiting(Window.of(page));
        model.addAttribute("rows", rows);
        model.addAttribute(
                "pieces",
                rows.rows().stream().flatMap(row -> row.pieces().stream()).toList());
        model.addAttribute("sent", list.sentToday());
        model.addAttribute("today", shop.today());
        return "sending/list";
    }

    @PostMapping(Ids.PATH + "/packed")
    String packed(
            @PathVariable UUID id, @RequestParam(defaultValue = "true") boolean packed, RedirectAttributes redirect) {
        require(id);
        sendings.packed(id, packed);
        Notice.next(redirect, packed ? "sending.packed.done" : "sending.packed.not");
        return LIST;
    }

    /** @param sent false takes the mark back */
    @PostMapping(Ids.PATH + "/sent")
    String sent(@PathVariable UUID id, @RequestParam(defaultValue = "true") boolean sent, RedirectAttributes redirect) {
        try {
            sendings.sent(id, sent ? shop.today() : null);
            Notice.next(redirect, sent ? "sending.sent.done" : "sending.sent.not");
        } catch (Refused sealed) {
            Notice.next(redirect, "sending.error.sealed");
        }
        return LIST;
    }

    private ToSend require(UUID sale) {
        return list.find(sale).orElseThrow(() -> new NotFound("Sale " + sale));
    }
}
