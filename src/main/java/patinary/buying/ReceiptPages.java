package patinary.buying;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.spending.ExpenseCategories;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** The list of receipts, one receipt, and its removal. */
@Controller
@RequestMapping("/receipts")
class ReceiptPages {

    /** A line with what its landed cost is made of. */
    record LineRow(
            ReceiptLine line,
            ReceiptSums.Parts parts,
            @Nullable String category) {}

    /** A charge with what it came to. */
    record ChargeRow(ReceiptCharge charge, Amount amount) {}

    /** A payment; the place's name where it was one. */
    record PaymentRow(Way way, String place, Amount amount) {}

    private final ReceiptDesk desk;
    private final ReceiptList list;
    private final ReceiptFacts facts;
    private final ReceiptChoices choices;
    private final Sources sources;
    private final MoneyPlaces places;
    private final ExpenseCategories categories = ExpenseCategories.load();
    private final OpenQuestion question;

    ReceiptPages(
            ReceiptDesk desk,
            ReceiptList list,
            ReceiptFacts facts,
            ReceiptChoices choices,
            Sources sources,
            MoneyPlaces places,
            OpenQuestion question) {
        this.desk = desk;
        this.list = list;
        this.facts = facts;
        this.choices = choices;
        this.sources = sources;
        this.places = places;
        this.question = question;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String source,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        ReceiptList.Query query = new ReceiptList.Query(q, kind, source, year);
        model.addAttribute("asked", query);
        model.addAttribute("found", list.find(query, Window.of(page)));
        model.addAttribute(
                "kinds",
                Stream.concat(
                                ReceiptChoices.lineKinds().stream(),
                                Stream.of(Choice.said(ReceiptList.OPEN, "buying.filter.open")))
                        .toList());
        model.addAttribute("sources", choices.sources());
        model.addAttribute(
                "years",
                list.years().stream()
                        .map(y -> Choice.named(y.toString(), y.toString()))
                        .toList());
        return "buying/receipts";
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        ReceiptContent receipt = find(id).content();
        ReceiptSums sums = receipt.sums();
        describe(id, receipt, model);
        model.addAttribute("rows", rows(receipt, sums));
        model.addAttribute(
                "charges",
                receipt.charges().stream()
                        .map(charge -> new ChargeRow(charge, sums.charged().getOrDefault(charge.line(), Amount.ZERO)))
                        .toList());
        model.addAttribute("rounding", sums.rounding());
        model.addAttribute("payments", payments(receipt.payments()));
        model.addAttribute("open", question.isOn(receipt));
        model.addAttribute("pieces", facts.pieces(id));
        model.addAttribute("paid", facts.paid(id));
        model.addAttribute("owed", facts.owed(id));
        model.addAttribute("postings", facts.postings(id));
        return "buying/receipt";
    }

    @GetMapping("/{id}/remove")
    String askToRemove(@PathVariable UUID id, Model model) {
        describe(id, find(id).content(), model);
        model.addAttribute("pieces", facts.pieces(id));
        return "buying/receipt-remove";
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        find(id);
        try {
            desk.remove(id);
        } catch (Refused | PieceInUse | DataIntegrityViolationException restingOnIt) {
            Notice.next(redirect, "buying.receipt.not-removed");
            return "redirect:/receipts/" + id;
        }
        Notice.next(redirect, "buying.receipt.removed");
        return "redirect:/receipts";
    }

    private void describe(UUID id, ReceiptContent receipt, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("receipt", receipt);
        model.addAttribute("source", source(receipt.sourceId()));
    }

    private @Nullable Source source(@Nullable UUID id) {
        return id == null ? null : sources.findById(id).orElse(null);
    }

    private List<LineRow> rows(ReceiptContent receipt, ReceiptSums sums) {
        List<ReceiptSums.Parts> parts = sums.parts();
        return IntStream.range(0, parts.size())
                .mapToObj(i -> {
                    ReceiptLine line = receipt.lines().get(i);
                    String category = line.category();
                    return new LineRow(line, parts.get(i), category == null ? null : categories.name(category));
                })
                .toList();
    }

    private List<PaymentRow> payments(List<Tender> payments) {
        Map<UUID, String> names =
                places.findAllByOrderByName().stream().collect(Collectors.toMap(MoneyPlace::id, MoneyPlace::name));
        return payments.stream()
                .map(payment -> new PaymentRow(
                        payment.way(),
                        Optional.ofNullable(payment.placeId()).map(names::get).orElse(""),
                        payment.amount()))
                .toList();
    }

    private ReceiptDesk.Stored find(UUID id) {
        return desk.read(id).orElseThrow(() -> new NotFound("receipt " + id));
    }
}
