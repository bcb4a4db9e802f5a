package patinary.exchange;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.ledger.DocumentKind;

/**
 * One file of the archive and the table it is kept in.
 *
 * @param name the table's name; the file has the same with .csv
 * @param kind the kind of document, where each row is one; its row in the table {@code document} is part of the file
 * @param document the column that names the document a row belongs to, where it belongs to one
 * @param columns the columns, in the order in which they are written
 * @param keys columns that together may not repeat; the first is the order of the rows
 * @param within columns that together must be the first key of another table's row
 * @param rules what else must hold of a row
 */
record ArchiveTable(
        String name,
        @Nullable DocumentKind kind,
        @Nullable String document,
        List<Column> columns,
        List<List<String>> keys,
        List<Within> within,
        List<Rule> rules) {

    record Within(String table, List<String> columns) {}

    String file() {
        return name + ".csv";
    }

    List<String> key() {
        return keys.get(0);
    }

    /** The columns that an archive of before may lack. */
    Set<String> later() {
        return columns.stream().filter(Column::later).map(Column::name).collect(Collectors.toSet());
    }

    int position(String column) {
        // Asked several times for every row of an archive.
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(column)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name + " has no column " + column);
    }

    boolean hasId() {
        return columns.stream().anyMatch(column -> column.name().equals("id"));
    }

    /** Whether a text is part of its key: each database has its own order of letters. */
    boolean isKeptByText() {
        return key().stream().anyMatch(name -> columns.get(position(name)).type() == Type.TEXT);
    }

    boolean isShop() {
        return name.equals(ShopTables.SHOP);
    }
}
