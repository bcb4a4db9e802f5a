package patinary.history;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import patinary.ledger.Trail;

/** Which page shows a document or another thing. */
final class Pages {

    private static final Pattern PAGE = Pattern.compile(
            "(/[a-z/-]+)/([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12})");

    private static final Map<String, String> PATHS = paths();

    private static final Subject SETTINGS = new Subject(Trail.SETTINGS, Trail.THE_SHOP);
    private static final String OF_SETTINGS = "/shop";

    private Pages() {}

    private static Map<String, String> paths() {
        Map<String, String> paths = new LinkedHashMap<>();
        paths.put("receipt", "/receipts");
        paths.put("supplier_return", "/supplier-returns");
        paths.put("taking", "/supplies/takings");
        paths.put("bench_entry", "/bench");
        paths.put("supply_count", "/supplies/counts");
        paths.put("sale", "/sales");
        paths.put("regrouping", "/pieces/regroupings");
        paths.put("offer", "/offers");
        paths.put("payout", "/payouts");
        paths.put("expense", "/expenses");
        paths.put("trip", "/trips");
        paths.put("other_income", "/other-income");
        paths.put("sales_tax_paid", "/sales-tax-paid");
        paths.put("owner_money", "/owner-money");
        paths.put("money_move", "/money-moves");
        paths.put("till_count", "/till-counts");
        paths.put("piece", "/pieces");
        paths.put("supply", "/supplies");
        paths.put("channel", "/channels");
        paths.put("source", "/sources");
        paths.put("money_place", "/money-places");
        paths.put("tax_place", "/tax-places");
        paths.put("discount_code", "/discount-codes");
        paths.put("supply_line", "/supplies/lines");
        paths.put("vehicle", "/vehicles");
        paths.put("finish", "/finishes");
        paths.put("object_kind", "/pieces/kinds");
        paths.put("style", "/pieces/styles");
        return paths;
    }

    /** The page of a subject; nothing where it has none of its own. */
    static Optional<String> of(Subject subject) {
        if (subject.equals(SETTINGS)) {
            return Optional.of(OF_SETTINGS);
        }
        return Optional.ofNullable(PATHS.get(subject.kind())).map(path -> path + "/" + subject.id());
    }

    /** What a page shows; nothing where it shows no single thing. */
    static Optional<Subject> at(String path) {
        if (path.equals(OF_SETTINGS)) {
            return Optional.of(SETTINGS);
        }
        Matcher page = PAGE.matcher(path);
        if (!page.matches()) {
            return Optional.empty();
        }
        UUID id = UUID.fromString(page.group(2));
        return PATHS.entrySet().stream()
                .filter(entry -> entry.getValue().equals(page.group(1)))
                .findFirst()
                .map(entry -> new Subject(entry.getKey(), id));
    }
}
