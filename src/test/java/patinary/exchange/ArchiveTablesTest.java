package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import patinary.ledger.DocumentKind;

class ArchiveTablesTest {

    @Test
    void everyKindOfDocumentHasItsFile() {
        Set<DocumentKind> kinds = new TreeSet<>();
        ArchiveTables.ALL.forEach(table -> {
            if (table.kind() != null) {
                kinds.add(table.kind());
            }
        });

        assertThat(kinds).containsExactly(DocumentKind.values());
    }

    @Test
    void aTableStandsBehindThoseItRefersTo() {
        Set<String> before = new HashSet<>();
        for (ArchiveTable table : ArchiveTables.ALL) {
            table.columns().stream()
                    .forEach(column -> assertThat(before)
                            .as(table.file() + " " + column.name())
                            .containsAll(column.references()));
            table.within().forEach(within -> assertThat(before).contains(within.table()));
            assertThat(before.add(table.name())).as(table.name()).isTrue();
        }
    }

    @Test
    void keysAndReferencesNameColumnsThatAreThere() {
        for (ArchiveTable table : ArchiveTables.ALL) {
            assertThat(table.keys()).as(table.name()).isNotEmpty();
            table.keys().forEach(key -> key.forEach(table::position));
            for (ArchiveTable.Within within : table.within()) {
                within.columns().forEach(table::position);
                assertThat(within.columns())
                        .hasSameSizeAs(ArchiveTables.named(within.table()).key());
            }
            table.rules().forEach(rule -> table.position(rule.column()));
        }
    }
}
