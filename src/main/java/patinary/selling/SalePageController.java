package patinary.selling;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.UUID;
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
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The page of one sale. */
@Controller
@RequestMapping("/sales/{id}")
class SalePageController {

    private record Stored(SaleContent content, long version) {}

    private static final String REMOVED = "selling.sale.removed";

    private final SellingDocuments documents;
    private final SalePage reader;
    private final SaleUndo undo;
    private final ChannelBook channels;
    private final WrapDesk wraps;
    private final BuyerMoney buyers;
    private final Undelivered undelivered;
    private final SaleTax taxes;
    private final CurrentShop shop;

    SalePageController(
            SellingDocuments documents,
            SalePage reader,
            SaleUndo undo,
            ChannelBook channels,
            WrapDesk wraps,
            BuyerMoney buyers,
            Undelivered undelivered,
            SaleTax taxes,
            CurrentShop shop) {
        this.documents = documents;
        this.reader = reader;
        this.undo = undo;
        this.channels = channels;
        this.wraps = wraps;
        this.buyers = buyers;
        this.undelivered = undelivered;
        this.taxes = taxes;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Stored stored = documents
                .read(Sale.class, id, one -> new Stored(one.content(), one.version()))
                .orElseThrow(() -> new NotFound("Sale " + id));
        SaleContent sale = stored.content();
        List<SalePage.Part> parts = reader.parts(id);
        model.addAttribute("id", id);
        model.addAttribute("sale", sale);
        model.addAttribute("due", sale.sums().due());
        model.addAttribute("channel", channels.find(sale.channelId()).orElse(null));
        model.addAttribute("taxPlace", taxes.name(sale.taxPlaceId()));
        model.addAttribute("parts", parts);
        List<SalePage.Packed> packed = sale.wraps().isEmpty() ? List.of() : reader.packed(id);
        model.addAttribute(
                "uncosted",
                parts.stream().anyMatch(SalePage.Part::uncosted)
                        || packed.stream().anyMatch(SalePage.Packed::waiting));
        model.addAttribute(
                "total", parts.stream().map(SalePage.Part::figures).reduce(SaleFigures.none(), SaleFigures::plus));
        model.addAttribute("packedIn", packed);
        model.addAttribute("ways", sale.wraps().isEmpty() ? wraps.offered(sale.channelId(), id) : List.of());
        model.addAttribute("version", stored.version());
        model.addAttribute("followers", reader.followers(id));
        model.addAttribute("sentBack", reader.sentBack(id));
        model.addAttribute("postings", reader.postings(id));
        model.addAttribute("owed", buyers.owed(id));
        model.addAttribute("today", shop.today().toString());
        return "selling/sale";
    }

    /** Marks the day it was sent off; an empty day takes the mark away. */
    @PostMapping("/posted")
    String posted(@PathVariable UUID id, @RequestParam(defaultValue = "") String day, RedirectAttributes redirect) {
        LocalDate sold = documents.read(Sale.class, id, Sale::date).orElseThrow(() -> new NotFound("Sale " + id));
        try {
            LocalDate sent = day.isBlank() ? null : Answers.day(day);
            if (sent != null && (sent.isBefore(sold) || sent.isAfter(shop.today()))) {
                Notice.next(redirect, "selling.error.posted-day");
                return "redirect:/sales/" + id;
            }
            long version = documents.read(Sale.class, id, Sale::version).orElseThrow();
            documents.step(Sale.class, id, version, sent == null ? shop.today() : sent, sale -> sale.posted(sent));
            Notice.next(redirect, sent == null ? "selling.sale.unposted-again" : "selling.sale.posted-done");
        } catch (DateTimeParseException unreadable) {
            Notice.next(redirect, "web.answer.date");
        } catch (Refused sealed) {
            Notice.next(redirect, "selling.error.sealed");
        }
        return "redirect:/sales/" + id;
    }

    @PostMapping("/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String said = undo.undo(id, REMOVED);
        Notice.next(redirect, said);
        return said.equals(REMOVED) ? "redirect:/sales" : "redirect:/sales/" + id;
    }

    /** Takes back that pieces of the order were not delivered; what was given back for them goes too. */
    @PostMapping("/delivered")
    String deliverAfterAll(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            undelivered.deliverAfterAll(id);
            Notice.next(redirect, "selling.sale.delivered-after-all");
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.gone-meanwhile");
        }
        return "redirect:/sales/" + id;
    }

    /** Removes a refund, payment or postage of the sale that was recorded by mistake. */
    @PostMapping("/followers/{follower}/remove")
    String removeFollower(@PathVariable UUID id, @PathVariable UUID follower, RedirectAttributes redirect) {
        boolean belongs = reader.followers(id).stream().anyMatch(row -> row.id().equals(follower));
        if (!belongs) {
            throw new NotFound("Document " + follower + " of sale " + id);
        }
        try {
            documents.remove(patinary.ledger.Document.class, follower);
            Notice.next(redirect, "selling.follower.removed");
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.undo");
        }
        return "redirect:/sales/" + id;
    }
}
