package patinary.buying;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.ledger.DocumentKind;
import patinary.pieces.ObjectKinds;
import patinary.pieces.Styles;
import patinary.shop.MoneyPlaces;
import patinary.spending.ExpenseCategories;
import patinary.web.Choice;

/** The lists that a receipt's form offers. */
@Component
class ReceiptChoices {

    private static final String TRIPS = """
            select t.id, d.doc_date, t.destination
            from (select id, doc_date from document where kind_rank = %d
                  order by kind_rank desc, doc_date desc, recorded_at desc
                  fetch first 30 rows only) d
            join trip t on t.id = d.id
            order by d.doc_date desc, d.id""".formatted(DocumentKind.TRIP.ordinal());

    /** The latest receipt of those typed last that was paid from a place; more of them than she pays otherwise in a row. */
    private static final String USUAL = """
            select p.place_id
            from (select id, recorded_at from document where kind_rank = %d
                  order by kind_rank desc, recorded_at desc
                  fetch first 100 rows only) d
            join receipt_payment p on p.receipt_id = d.id
            where p.place_id is not null
            order by d.recorded_at desc, d.id fetch first 1 row only""".formatted(DocumentKind.RECEIPT.ordinal());

    private final Sources sources;
    private final MoneyPlaces places;
    private final SupplyReader supplies;
    private final ExpenseCategories categories = ExpenseCategories.load();
    private final ObjectKinds kinds;
    private final Styles styles;
    private final JdbcClient jdbc;

    ReceiptChoices(
            Sources sources,
            MoneyPlaces places,
            SupplyReader supplies,
            ObjectKinds kinds,
            Styles styles,
            JdbcClient jdbc) {
        this.sources = sources;
        this.places = places;
        this.supplies = supplies;
        this.kinds = kinds;
        this.styles = styles;
        this.jdbc = jdbc;
    }

    void offer(Model model) {
        model.addAttribute("sources", sources());
        model.addAttribute("paidWith", PaidWith.choices(places.findAllByOrderByName(), false));
        model.addAttribute("supplies", supplies.choices());
        model.addAttribute("categories", categories.choices());
        model.addAttribute("lineKinds", lineKinds());
        model.addAttribute("chargeKinds", chargeKinds());
        model.addAttribute(
                "kinds",
                kinds.findAllByOrderByName().stream()
                        .map(kind -> Choice.named(kind.id().toString(), kind.name()))
                        .toList());
        model.addAttribute(
                "styles",
                styles.findAllByOrderByName().stream()
                        .map(style -> Choice.named(style.id().toString(), style.name()))
                        .toList());
        model.addAttribute("trips", trips());
        model.addAttribute("days", days());
    }

    /** The quick answers to when it was bought. */
    static List<Choice> days() {
        return List.of(ReceiptForm.TODAY, ReceiptForm.YESTERDAY, ReceiptForm.OTHER).stream()
                .map(day -> Choice.said(day, "buying.day." + day))
                .toList();
    }

    /** The money place that the receipt typed last was paid from, or empty. */
    String usual() {
        return jdbc.sql(USUAL)
                .query((row, number) -> row.getObject("place_id", UUID.class).toString())
                .optional()
                .orElse("");
    }

    List<Choice> sources() {
        return sources.findAllByOrderByName().stream()
                .map(source -> Choice.named(source.id().toString(), source.name()))
                .toList();
    }

    static List<Choice> lineKinds() {
        return Arrays.stream(LineKind.values())
                .map(kind -> Choice.said(kind.name(), "buying.kind." + kind.name()))
                .toList();
    }

    private static List<Choice> chargeKinds() {
        return Arrays.stream(ChargeKind.values())
                .filter(kind -> kind != ChargeKind.ROUNDING)
                .map(kind -> Choice.said(kind.name(), "buying.charge." + kind.name()))
                .toList();
    }

    private List<Choice> trips() {
        return jdbc.sql(TRIPS)
                .query((row, number) -> Choice.named(
                        row.getObject("id", UUID.class).toString(),
                        row.getDate("doc_date").toLocalDate() + " " + row.getString("destination")))
                .list();
    }
}
