package patinary.yearfolder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One table of the folder. Its rows are handed on one by one and never held together.
 *
 * @param name the name of its file and its sheet
 */
record FolderTable(String name, List<Column> columns, Content content) {

    /** Takes the rows of a table. */
    @FunctionalInterface
    interface Rows {
        void row(@Nullable Object... cells);
    }

    /** Hands the rows of a table on. */
    @FunctionalInterface
    interface Content {
        void to(Rows rows);
    }

    List<String> headings() {
        return columns.stream().map(Column::name).toList();
    }

    /** The place of a column, from 0. */
    int at(String heading) {
        int at = headings().indexOf(heading);
        if (at < 0) {
            throw new IllegalArgumentException(name + " has no column " + heading);
        }
        return at;
    }
}
