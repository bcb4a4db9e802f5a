package patinary.demo;

import java.util.List;
import java.util.UUID;

/** The last sales of the invented marketplace came in from a file, by a mapping that she saved. */
final class BroughtFile {

    private static final int SALES = 3;
    private static final int ID = 0;
    private static final int RECORDED = 3;
    private static final int CHANNEL = 4;
    private static final int ORDER = 6;

    private final State shop;

    BroughtFile(State shop) {
        this.shop = shop;
    }

    void write() {
        List<List<String>> ordered = shop.rows.of("sale").stream()
                .filter(sale -> !sale.get(ORDER).isEmpty())
                .toList();
        List<String> last = ordered.get(ordered.size() - 1);
        List<List<String>> same = ordered.stream()
                .filter(sale -> sale.get(CHANNEL).equals(last.get(CHANNEL)))
                .toList();
        List<List<String>> brought = same.subList(same.size() - SALES, same.size());
        UUID id = shop.draws.id();
        shop.rows.add("sales_import", id, "invented-sales.csv", last.get(CHANNEL), last.get(RECORDED), SALES, "");
        brought.forEach(sale -> shop.rows.add("sales_import_sale", id, sale.get(ID)));
        mapping(last.get(CHANNEL));
    }

    private void mapping(String channel) {
        UUID id = shop.draws.id();
        shop.rows.add(
                "sales_mapping",
                id,
                "Invented marketplace",
                "",
                "UTF_8",
                "COMMA",
                0,
                true,
                "YEAR_MONTH_DAY",
                "POINT",
                false,
                true,
                channel);
        List<String> meanings =
                List.of("ORDER", "DATE", "TITLE", "CODE", "QUANTITY", "PRICE", "SHIPPING", "TOTAL", "BUYER");
        meanings.forEach(meaning -> shop.rows.add("sales_mapping_column", id, meaning, meanings.indexOf(meaning)));
    }
}
