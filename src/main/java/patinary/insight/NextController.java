package patinary.insight;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.money.Percent;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.CsvFile;
import patinary.web.NotFound;
import patinary.web.Page;
import patinary.web.Window;

/** What to make next, and what each suggestion rests on. */
@Controller
class NextController {

    private final NextReport report;
    private final Outcomes outcomes;
    private final PieceNames names;
    private final Traits traits;
    private final CurrentAims aims;
    private final CurrentShop shop;

    NextController(
            NextReport report, Outcomes outcomes, PieceNames names, Traits traits, CurrentAims aims, CurrentShop shop) {
        this.report = report;
        this.outcomes = outcomes;
        this.names = names;
        this.traits = traits;
        this.aims = aims;
        this.shop = shop;
    }

    /**
     * @param row the number of the row whose pieces are shown; the first where there is no such row
     * @param groups the page of the rows
     */
    @GetMapping("/moves/next")
    String page(
            Asked asked,
            @RequestParam(defaultValue = "hour") String order,
            @RequestParam(defaultValue = "both") String by,
            @RequestParam(defaultValue = "0") int row,
            @RequestParam(required = false) @Nullable Integer page,
            @RequestParam(required = false) @Nullable Integer groups,
            Model model) {
        MakeNext.Order known = known(order);
        Together level = level(by);
        Narrowing narrowing = traits.narrowing(asked);
        List<NextRow> rows = report.rows(known, level, narrowing);
        model.addAttribute("narrowing", narrowing);
        model.addAttribute("by", level.word());
        model.addAttribute(
                "bys",
                Stream.of("both", "kind", "style")
                        .map(one -> Choice.said(one, "insight.next.by." + one))
                        .toList());
        model.addAttribute("order", known.word());
        model.addAttribute(
                "orders",
                Arrays.stream(MakeNext.Order.values())
                        .map(one -> Choice.said(one.word(), "insight.next.order." + one.word()))
                        .toList());
        Page<NextRow> part = Page.within(rows, Window.of(groups));
        model.addAttribute("rows", rows);
        model.addAttribute("part", part);
        model.addAttribute("ready", report.ready(part.rows(), level));
        model.addAttribute("fewest", WhatToPay.FEW);
        model.addAttribute("horizon", aims.get().horizonDays());
        model.addAttribute("salvage", aims.get().salvage());
        if (!rows.isEmpty()) {
            NextRow opened = rows.get(row < 0 || row >= rows.size() ? 0 : row);
            model.addAttribute("opened", opened);
            model.addAttribute(
                    "pieces",
                    names.page(outcomes.behind(opened.group(), level, narrowing), Outcome::piece, Window.of(page)));
        }
        return "insight/next";
    }

    @GetMapping("/moves/next.csv")
    ResponseEntity<byte[]> csv(
            Asked asked,
            @RequestParam(defaultValue = "hour") String order,
            @RequestParam(defaultValue = "both") String by) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "kind",
                "style",
                "profit_expected",
                "low",
                "high",
                "profit_of_a_bench_hour",
                "hour_low",
                "hour_high",
                "profit_on_money_percent",
                "money_low",
                "money_high",
                "minutes",
                "money_in_it",
                "sold",
                "had_their_time",
                "told",
                "supplies_enough_for");
        Together level = level(by);
        List<NextRow> rows = report.rows(known(order), level, traits.narrowing(asked));
        Map<PayRow.Group, List<Readiness>> ready = report.ready(rows, level);
        rows.forEach(row -> file.row(
                row.group().kind(),
                row.group().style(),
                told(row, NextRow::profitEach),
                told(row, NextRow::low),
                told(row, NextRow::high),
                told(row, NextRow::perHour),
                told(row, NextRow::perHourLow),
                told(row, NextRow::perHourHigh),
                told(row, one -> value(one.onMoney())),
                told(row, one -> value(one.onMoneyLow())),
                told(row, one -> value(one.onMoneyHigh())),
                row.wholeMinutes(),
                row.moneyEach(),
                row.pool().net().count(),
                row.pool().tries().pieces(),
                row.words(),
                ready.getOrDefault(row.group(), List.of()).stream()
                        .map(NextController::said)
                        .collect(Collectors.joining("; "))));
        return file.download("what-to-make-next.csv");
    }

    /** Of a group that is too small to tell nothing is said, as on the page. */
    private static <T> @Nullable T told(NextRow row, Function<NextRow, @Nullable T> figure) {
        return row.told() ? figure.apply(row) : null;
    }

    /** A finish, for how many pieces there is enough, and what is short: Matt wax: 4; Gloss: 0 (Gloss varnish). */
    private static String said(Readiness ready) {
        String enough = ready.enoughFor() == null ? "?" : String.valueOf(ready.enoughFor());
        String shortOf = ready.shortOf().isEmpty() ? "" : " (" + String.join(", ", ready.shortOf()) + ")";
        return ready.name() + ": " + enough + shortOf;
    }

    private static Together level(String word) {
        return Together.of(word).orElseThrow(() -> new NotFound("group " + word));
    }

    private static MakeNext.Order known(String word) {
        return MakeNext.Order.of(word).orElseThrow(() -> new NotFound("order " + word));
    }

    private static java.math.@Nullable BigDecimal value(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }
}
