package patinary.pieces;

import java.util.stream.Stream;
import patinary.web.NotFound;

/** One of her own lists that pieces are sorted by. */
enum OwnList {
    STYLES("style", "style_id"),
    KINDS("object_kind", "kind_id");

    private final String table;
    private final String column;

    OwnList(String table, String column) {
        this.table = table;
        this.column = column;
    }

    /** The table that holds the list. */
    String table() {
        return table;
    }

    /** The column of a piece that points into it. */
    String column() {
        return column;
    }

    /** Whether each name has a usual surface. */
    boolean hasAreas() {
        return this == KINDS;
    }

    /** The word in the address and in the message keys. */
    String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    static OwnList called(String word) {
        return Stream.of(values())
                .filter(list -> list.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new NotFound("list " + word));
    }
}
