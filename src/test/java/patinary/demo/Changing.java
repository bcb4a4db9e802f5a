package patinary.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import patinary.exchange.Content;

/** What she changed of late: an expense typed wrongly, the note of a code, and money recorded twice; all invented. */
final class Changing {

    private static final List<String> EXPENSE =
            List.of("id", "date", "note", "recorded_at", "category", "payee", "place_id", "amount");
    private static final List<String> CODE =
            List.of("id", "code", "percent", "amount", "valid_from", "valid_to", "note");
    private static final List<String> OWNER_MONEY =
            List.of("id", "date", "note", "recorded_at", "direction", "place_id", "amount");

    private final State shop;
    private int acts;

    Changing(State shop) {
        this.shop = shop;
    }

    /** To be called when everything else is written; it draws nothing. */
    void write() {
        Map<String, String> expense = last("expense", EXPENSE);
        Map<String, String> mistyped = with(expense, "amount", "41.00");
        Instant evening = Instant.parse(expense.get("recorded_at"));
        change(evening, "expense", expense, "", content("expense", mistyped));
        change(evening.plusSeconds(95), "expense", expense, content("expense", mistyped), content("expense", expense));

        Map<String, String> code = last("discount_code", CODE);
        change(
                evening.plusSeconds(600),
                "discount_code",
                code,
                content("discount_code", with(code, "note", "In the bag")),
                content("discount_code", code));

        Map<String, String> twice =
                with(last("owner_money", OWNER_MONEY), "id", id("twice").toString());
        change(
                Instant.parse(twice.get("recorded_at")).plusSeconds(80),
                "owner_money",
                twice,
                content("owner_money", twice),
                "");
    }

    private void change(Instant at, String kind, Map<String, String> subject, String before, String after) {
        acts++;
        shop.rows.add(
                "history",
                id("row " + acts),
                id("act " + acts),
                1,
                at,
                "Demo",
                "FORM",
                "",
                kind,
                subject.get("id"),
                subject.getOrDefault("date", ""),
                "",
                "",
                before,
                after);
    }

    private Map<String, String> last(String table, List<String> columns) {
        List<List<String>> rows = shop.rows.of(table);
        List<String> cells = rows.get(rows.size() - 1);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                row.put(columns.get(i), cells.get(i));
            }
        }
        return row;
    }

    private static Map<String, String> with(Map<String, String> row, String column, String text) {
        Map<String, String> changed = new LinkedHashMap<>(row);
        changed.put(column, text);
        return changed;
    }

    private static String content(String table, Map<String, String> row) {
        return new Content(Map.of(table, List.of(row))).text();
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(("change " + name).getBytes(StandardCharsets.UTF_8));
    }
}
