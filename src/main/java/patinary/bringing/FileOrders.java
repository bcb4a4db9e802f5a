package patinary.bringing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import patinary.money.ShopCurrency;

/** Gathers the rows of a file into orders, in the order of their first rows. Pure. */
final class FileOrders {

    private static final int HASH = 12;

    private FileOrders() {}

    static List<FileOrder> read(Sheet sheet, Mapping mapping, ShopCurrency currency, Set<Integer> out) {
        Map<String, List<RowReader.ReadRow>> orders = new LinkedHashMap<>();
        Map<String, Integer> alike = new HashMap<>();
        List<Sheet.Row> rows = mapping.rows(sheet);
        int width = mapping.header() ? mapping.head(sheet).size() : sheet.width();
        for (Sheet.Row row : rows) {
            String reference = reference(row, mapping, alike);
            String key = reference.isEmpty() ? "\u0000" + row.number() : FileOrder.key(reference);
            orders.computeIfAbsent(key, fresh -> new ArrayList<>())
                    .add(RowReader.read(mapping, currency, row, reference, width));
        }
        return orders.values().stream()
                .map(read -> FileOrder.of(read, mapping, out))
                .toList();
    }

    /**
     * The order's number; where the file has none, each row is a sale of its own and is known by the hash of what it says.
     * Rows that say the same are told apart by their place among themselves.
     */
    private static String reference(Sheet.Row row, Mapping mapping, Map<String, Integer> alike) {
        if (mapping.has(Meaning.ORDER)) {
            return mapping.cell(row, Meaning.ORDER);
        }
        String hash = Mapping.hash(String.join(
                        "\u001F", row.cells().stream().map(String::strip).toList()))
                .substring(0, HASH);
        int place = alike.merge(hash, 1, Integer::sum);
        return place == 1 ? hash : hash + "-" + place;
    }
}
