package patinary.counting;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.web.Choice;

/** Fills the counting page: with the shop's supplies, or, before the sign-in, with nothing. */
@Component
class CountPage {

    private static final List<Choice> SETTLE =
            List.of(Choice.said("SHARE", "counting.settle.SHARE"), Choice.said("WASTE", "counting.settle.WASTE"));

    private final SupplyCatalog catalog;
    private final CurrentShop shop;
    private final JdbcClient jdbc;

    CountPage(SupplyCatalog catalog, CurrentShop shop, JdbcClient jdbc) {
        this.catalog = catalog;
        this.shop = shop;
        this.jdbc = jdbc;
    }

    void shell(Model model) {
        show(model, new QuickCountForm(), List.of(), null, Set.of());
    }

    void fill(Model model, QuickCountForm form) {
        List<CountRow> rows = CountRow.of(catalog.all());
        CountRow chosen = rows.stream()
                .filter(row -> row.value().toString().equals(form.supply))
                .findFirst()
                .orElse(null);
        show(model, form, rows, chosen, countedOn(shop.today()));
    }

    /** The first supply after this one, in the page's order, that was not counted today. */
    Optional<UUID> next(UUID after) {
        Set<UUID> counted = countedOn(shop.today());
        return CountRow.of(catalog.all()).stream()
                .map(CountRow::value)
                .dropWhile(id -> !id.equals(after))
                .skip(1)
                .filter(id -> !counted.contains(id))
                .findFirst();
    }

    private Set<UUID> countedOn(LocalDate day) {
        return new HashSet<>(jdbc.sql("select c.supply_id from supply_count c join document d on d.id = c.id"
                        + " where c.place = 'BENCH' and d.doc_date = ?")
                .param(day)
                .query(UUID.class)
                .list());
    }

    private static void show(
            Model model, QuickCountForm form, List<CountRow> rows, @Nullable CountRow chosen, Set<UUID> counted) {
        model.addAttribute("form", form);
        model.addAttribute("rows", rows);
        model.addAttribute("chosen", chosen);
        model.addAttribute("counted", counted);
        model.addAttribute("settles", SETTLE);
        model.addAttribute("quarters", List.of("0", "1", "2", "3", "4"));
    }
}
