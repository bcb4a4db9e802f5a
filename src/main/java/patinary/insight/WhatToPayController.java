package patinary.insight;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;

/** What to pay at the shelf, and how each figure is worked out. */
@Controller
class WhatToPayController {

    private static final String OWNER = "OWNER";

    private final Outcomes outcomes;
    private final CurrentAims aims;
    private final CurrentShop shop;

    WhatToPayController(Outcomes outcomes, CurrentAims aims, CurrentShop shop) {
        this.outcomes = outcomes;
        this.aims = aims;
        this.shop = shop;
    }

    /** @param row the number of the row that is worked out in full; the whole shop's where there is no such row */
    @GetMapping("/moves/what-to-pay")
    String page(@RequestParam(defaultValue = "0") String row, HttpServletRequest request, Model model) {
        List<PayRow> rows = outcomes.whatToPay();
        model.addAttribute("rows", rows);
        // Only the owner gets to what she aims at; a reader is not sent to a closed door.
        model.addAttribute("mayAim", request.isUserInRole(OWNER));
        model.addAttribute("aims", aims.get());
        model.addAttribute("rate", shop.hourlyRate());
        model.addAttribute("fewest", WhatToPay.FEW);
        model.addAttribute("trial", outcomes.trial().orElse(null));
        if (!rows.isEmpty()) {
            int chosen = number(row).filter(at -> at < rows.size()).orElse(0);
            model.addAttribute("chosen", chosen);
            model.addAttribute("worked", rows.get(chosen));
        }
        return "insight/what-to-pay";
    }

    @GetMapping("/moves/what-to-pay.csv")
    ResponseEntity<byte[]> csv() {
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
                "may_be_spent");
        outcomes.whatToPay().forEach(row -> write(file, row));
        return file.download("what-to-pay.csv");
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
                budget == null ? null : budget.spend());
    }

    private static Optional<Integer> number(String typed) {
        return typed.matches("\\d{1,6}") ? Optional.of(Integer.valueOf(typed)) : Optional.empty();
    }
}
