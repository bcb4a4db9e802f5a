package patinary.insight;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;
import patinary.web.Page;
import patinary.web.Window;

/** What to pay at the shelf, and how each figure is worked out. */
@Controller
class WhatToPayController {

    private static final String OWNER = "OWNER";

    private final Outcomes outcomes;
    private final Traits traits;
    private final PieceNames names;
    private final CurrentAims aims;
    private final CurrentShop shop;

    WhatToPayController(Outcomes outcomes, Traits traits, PieceNames names, CurrentAims aims, CurrentShop shop) {
        this.outcomes = outcomes;
        this.traits = traits;
        this.names = names;
        this.aims = aims;
        this.shop = shop;
    }

    /**
     * @param row the number of the row that is worked out in full; the whole shop's where there is no such row
     * @param groups the page of the rows
     * @param judged the page of the pieces on which the advice was tried
     */
    @GetMapping("/moves/what-to-pay")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "0") String row,
            @RequestParam(required = false) @Nullable Integer page,
            @RequestParam(required = false) @Nullable Integer groups,
            @RequestParam(required = false) @Nullable Integer judged,
            HttpServletRequest request,
            Model model) {
        Narrowing narrowing = traits.narrowing(asked);
        Outcomes.Answer answer = outcomes.answer(narrowing);
        List<PayRow> rows = answer.rows();
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("rows", rows);
        model.addAttribute("part", Page.within(rows, Window.of(groups)));
        // Only the owner gets to what she aims at; a reader is not sent to a closed door.
        model.addAttribute("mayAim", request.isUserInRole(OWNER));
        model.addAttribute("aims", aims.get());
        model.addAttribute("rate", shop.hourlyRate());
        model.addAttribute("fewest", WhatToPay.FEW);
        PayTrial tried = answer.trial();
        model.addAttribute("trial", tried);
        if (tried != null) {
            model.addAttribute("judged", names.page(tried.judged(), PayTrial.Judged::piece, Window.of(judged)));
        }
        if (!rows.isEmpty()) {
            int chosen = number(row).filter(at -> at < rows.size()).orElse(0);
            model.addAttribute("chosen", chosen);
            model.addAttribute("worked", rows.get(chosen));
            model.addAttribute(
                    "pieces",
                    names.page(
                            outcomes.behind(rows.get(chosen).group(), Together.ANY, narrowing),
                            Outcome::piece,
                            Window.of(page)));
        }
        return "insight/what-to-pay";
    }

    @GetMapping("/moves/what-to-pay.csv")
    ResponseEntity<byte[]> csv(Asked asked) {
        Aims now = aims.get();
        CsvFile file = new CsvFile(
                shop.currency(),
                "kind",
                "style",
                "most",
                "low",
                "high",
                "pieces",
                "tried",
                "sold_within_" + now.horizonDays() + "_days",
                "sold",
                "chance_percent",
                "net_if_sold",
                "supplies",
                "work",
                "target",
                "may_be_spent",
                "paid_if_sold",
                "off_if_sold");
        outcomes.whatToPay(traits.narrowing(asked)).forEach(row -> write(file, row));
        return file.download("what-to-pay.csv");
    }

    /** How the advice would have done on her own past. */
    @GetMapping("/moves/what-to-pay/trial.csv")
    ResponseEntity<byte[]> trial(Asked asked) {
        CsvFile file = new CsvFile(shop.currency(), "cost", "pieces", "left_of_one", "reached_the_aim");
        outcomes.trial(traits.narrowing(asked)).ifPresent(trial -> {
            write(file, "no_more_than_the_advice", trial.within());
            write(file, "more_than_the_advice", trial.above());
        });
        return file.download("what-to-pay-tried.csv");
    }

    /** Every piece that the advice was held against. */
    @GetMapping("/moves/what-to-pay/judged.csv")
    ResponseEntity<byte[]> judged(Asked asked) {
        CsvFile file = new CsvFile(
                shop.currency(), "code", "title", "within_the_advice", "bought", "might_be_spent", "brought", "left");
        List<PayTrial.Judged> judged =
                outcomes.trial(traits.narrowing(asked)).map(PayTrial::judged).orElse(List.of());
        names.named(judged, PayTrial.Judged::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().within(),
                        one.row().past().bought(),
                        one.row().budget().spend(),
                        one.row().brought(),
                        one.row().kept()));
        return file.download("what-to-pay-judged.csv");
    }

    private static void write(CsvFile file, String cost, PayTrial.Side side) {
        file.row(cost, side.pieces(), side.kept(), side.reached());
    }

    private static void write(CsvFile file, PayRow row) {
        Budget budget = row.budget();
        file.row(
                row.group().kind(),
                row.group().style(),
                row.most(),
                row.low(),
                row.high(),
                row.pool().pieces(),
                row.pool().tries().pieces(),
                row.pool().tries().sold(),
                row.pool().net().count(),
                budget == null ? null : budget.chance().value(),
                budget == null ? null : budget.net(),
                budget == null ? null : budget.supplies(),
                budget == null ? null : budget.work(),
                budget == null ? null : budget.target(),
                budget == null ? null : budget.spend(),
                row.paid(),
                row.off());
    }

    private static Optional<Integer> number(String typed) {
        return typed.matches("\\d{1,6}") ? Optional.of(Integer.valueOf(typed)) : Optional.empty();
    }
}
