package patinary.exchange;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import patinary.durable.ManyRows;
import patinary.ledger.DocumentKind;

/** Writes the rows of a file into its table, and what all documents have in common into theirs. */
final class TableFilling {

    private static final List<String> DOCUMENT =
            List.of("id", "kind", "kind_rank", "doc_date", "note", "recorded_at", "version");
    private static final int NEW = 0;

    private final Fields fields;
    private final @Nullable DocumentKind kind;
    private final boolean versioned;
    private final List<Column> columns;
    private final int[] positions;
    private final ManyRows.Filling documents;
    private final ManyRows.Filling rows;

    TableFilling(ManyRows many, ArchiveTable table, Fields fields) {
        this.fields = fields;
        kind = table.kind();
        versioned = ArchiveSql.isVersioned(table);
        columns = ArchiveSql.own(table);
        positions = columns.stream()
                .mapToInt(column -> table.position(column.name()))
                .toArray();
        documents = many.into("document", DOCUMENT);
        List<String> names = new ArrayList<>(columns.stream().map(Column::field).toList());
        if (versioned) {
            names.add("version");
        }
        rows = many.into(table.name(), names);
    }

    /** A document goes first: its row in its own table names it. */
    void add(Row row) {
        if (kind != null) {
            documents.add(document(kind, row));
        }
        @Nullable Object[] values = new Object[columns.size() + (versioned ? 1 : 0)];
        for (int i = 0; i < positions.length; i++) {
            values[i] = fields.stored(columns.get(i), row.values().get(positions[i]));
        }
        if (versioned) {
            values[positions.length] = NEW;
        }
        rows.add(values);
    }

    void end() {
        documents.end();
        rows.end();
    }

    private static @Nullable Object[] document(DocumentKind kind, Row row) {
        Instant recorded = (Instant) Objects.requireNonNull(row.get("recorded_at"));
        return new @Nullable Object[] {
            row.get("id"),
            kind.name(),
            kind.ordinal(),
            row.get("date"),
            row.get("note"),
            recorded.atOffset(ZoneOffset.UTC),
            NEW
        };
    }
}
