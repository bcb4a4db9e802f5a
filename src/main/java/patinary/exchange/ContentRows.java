package patinary.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Rows as a content keeps them: texts by column, without the empty ones and without the id that they belong to. */
final class ContentRows {

    private ContentRows() {}

    static Map<String, String> texts(Family.Member member, Row row, Cells cells) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < row.values().size(); i++) {
            Column column = member.table().columns().get(i);
            String text = cells.write(column, row.values().get(i));
            if (!text.isEmpty() && !column.name().equals(member.owner())) {
                texts.put(column.name(), text);
            }
        }
        return texts;
    }

    /** The rows of a member with typed values, as an archive's reader would give them. */
    static List<Row> rows(Family.Member member, UUID id, Content content, Cells cells) {
        ArchiveTable table = member.table();
        List<Row> rows = new ArrayList<>();
        for (Map<String, String> texts : content.rows(table.name())) {
            List<@Nullable Object> values = new ArrayList<>();
            for (Column column : table.columns()) {
                values.add(
                        column.name().equals(member.owner())
                                ? id
                                : CellValue.read(cells, table, column, texts.getOrDefault(column.name(), "")));
            }
            rows.add(new Row(table, 0, values));
        }
        return rows;
    }
}
