package patinary.exchange;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.durable.ManyRows;
import patinary.ledger.Batches;
import patinary.ledger.DocumentKind;
import patinary.ledger.Trail;
import patinary.shop.CurrentShop;

/**
 * Reads what documents and other things are made of as they stand in the database, and puts kept rows back in the same form in
 * which an archive is taken in. Nothing is derived here: whoever puts documents back has the books derive anew.
 */
@Repository
public class KeptRows {

    private static final int AT_ONCE = 200;

    /** What the one row of the settings is told by. */
    private static final int THE_ONLY = 1;

    private static final String DOCUMENT_CHANGED =
            "update document set doc_date = ?, note = ?, version = version + 1 where id = ?";

    private final JdbcTemplate jdbc;
    private final ManyRows many;
    private final CurrentShop shop;

    KeptRows(DataSource store, ManyRows many, CurrentShop shop) {
        jdbc = new JdbcTemplate(store);
        this.many = many;
        this.shop = shop;
    }

    /** The table that documents of a kind are rows of. */
    public static String table(DocumentKind kind) {
        return ArchiveTables.ALL.stream()
                .filter(table -> table.kind() == kind)
                .findFirst()
                .map(ArchiveTable::name)
                .orElseThrow();
    }

    /** The kind of document that a table holds; nothing where it holds other things. */
    public static Optional<DocumentKind> kind(String table) {
        return Family.of(table).map(Family::root).map(ArchiveTable::kind);
    }

    /** The columns by which a row of a table is told from its like; none where there is one row. */
    public static List<String> key(String table) {
        if (table.equals(Trail.SETTINGS)) {
            return List.of();
        }
        return ArchiveTables.ofFile(table + ".csv").map(ArchiveTable::key).orElse(List.of());
    }

    /** Every table whose rows, with what belongs to them, can be read here. */
    public static Set<String> tables() {
        return Family.roots();
    }

    /** The tables whose rows belong to the rows of another. */
    public static List<String> members(String table) {
        return family(table).members().stream()
                .map(member -> member.table().name())
                .toList();
    }

    /** The columns of a table; none where this version of the program does not know it. */
    public static List<String> columns(String table) {
        return ArchiveTables.ofFile(table + ".csv")
                .map(known -> known.columns().stream().map(Column::name).toList())
                .orElse(List.of());
    }

    /** Where a table stands in the archive: behind those that it refers to. */
    public static int place(String table) {
        return ArchiveTables.ALL.indexOf(ArchiveTables.named(table));
    }

    /**
     * What rows of a table are made of.
     *
     * @return by id; what is not there is left out
     */
    public Map<UUID, Content> read(String table, Collection<UUID> ids) {
        Family family = family(table);
        List<UUID> all = List.copyOf(new HashSet<>(ids));
        Map<UUID, Map<String, List<Map<String, String>>>> found = new HashMap<>();
        for (List<UUID> some : Batches.of(all, AT_ONCE)) {
            read(family.self(), some, found);
            if (some.stream().anyMatch(found::containsKey)) {
                family.members().forEach(member -> read(member, some, found));
            }
        }
        Map<UUID, Content> contents = new HashMap<>();
        found.forEach((id, tables) -> contents.put(id, new Content(tables)));
        return contents;
    }

    /**
     * Makes a row and what belongs to it what it was; tables in which nothing differs are left alone.
     *
     * @param now what is there; null where it is not there
     * @throws UnreadableContent where the content names what this program does not know
     */
    public void put(String table, UUID id, @Nullable Content now, Content then) {
        Family family = family(table);
        if (now == null) {
            insertRoot(family.root(), id, then);
            family.members().forEach(member -> insert(member, id, then));
            return;
        }
        if (!now.rows(table).equals(then.rows(table))) {
            updateRoot(family.self(), id, then);
        }
        Set<String> changed = new HashSet<>();
        family.members().stream()
                .map(member -> member.table().name())
                .filter(name -> !now.rows(name).equals(then.rows(name)))
                .forEach(changed::add);
        List<Family.Member> anew = family.with(changed);
        long version = anew.stream().mapToLong(this::nextVersion).max().orElse(0);
        clear(anew, id);
        anew.forEach(member -> insert(member, id, then));
        anew.stream()
                .filter(KeptRows::isVersioned)
                .forEach(member -> jdbc.update("update " + member.table().name() + " set version = ?", version));
    }

    /**
     * Takes away something that is no document, with what belongs to it.
     *
     * @throws org.springframework.dao.DataIntegrityViolationException where something else names it
     */
    public void remove(String table, UUID id) {
        Family family = family(table);
        clear(family.members(), id);
        jdbc.update(ArchiveSql.delete(family.self()), id);
    }

    /** What counts the changes of a row of its own that belongs to the shop. */
    private static boolean isVersioned(Family.Member member) {
        return member.isWhole() && Family.VERSIONED.contains(member.table().name());
    }

    /** Whoever still has a form of the row as it is now must not save it in silence over the one that is put back. */
    private long nextVersion(Family.Member member) {
        Long latest = isVersioned(member)
                ? jdbc.queryForObject(
                        "select max(version) from " + member.table().name(), Long.class)
                : null;
        return latest == null ? 0 : latest + 1;
    }

    private void clear(List<Family.Member> members, UUID id) {
        for (int i = members.size() - 1; i >= 0; i--) {
            Family.Member member = members.get(i);
            jdbc.update(ArchiveSql.delete(member), member.isWhole() ? new Object[0] : new Object[] {id});
        }
    }

    private void read(Family.Member member, List<UUID> some, Map<UUID, Map<String, List<Map<String, String>>>> found) {
        ArchiveTable table = member.table();
        List<Row> rows = new ArrayList<>();
        Fields fields = new Fields(shop.currency());
        jdbc.query(
                ArchiveSql.select(member, some.size()),
                result -> {
                    rows.add(ArchiveExport.row(table, fields, result));
                },
                member.isWhole() ? new Object[0] : some.toArray());
        if (table.isKeptByText()) {
            rows.sort(Comparator.comparing(row -> row.joined(table.key())));
        }
        Cells cells = cells();
        for (Row row : rows) {
            UUID id = member.isWhole() ? some.get(0) : (UUID) Objects.requireNonNull(row.get(member.owner()));
            found.computeIfAbsent(id, fresh -> new LinkedHashMap<>())
                    .computeIfAbsent(table.name(), fresh -> new ArrayList<>())
                    .add(ContentRows.texts(member, row, cells));
        }
    }

    private void insertRoot(ArchiveTable table, UUID id, Content then) {
        Row row = ContentRows.rows(new Family.Member(table, "id"), id, then, cells())
                .get(0);
        insert(table, List.of(row));
    }

    private void insert(Family.Member member, UUID id, Content then) {
        insert(member.table(), ContentRows.rows(member, id, then, cells()));
    }

    private void insert(ArchiveTable table, List<Row> rows) {
        TableFilling filling = new TableFilling(many, table, new Fields(shop.currency()));
        rows.forEach(filling::add);
        filling.end();
    }

    private void updateRoot(Family.Member self, UUID id, Content then) {
        ArchiveTable table = self.table();
        Row row = ContentRows.rows(self, id, then, cells()).get(0);
        if (table.kind() != null) {
            jdbc.update(DOCUMENT_CHANGED, row.get("date"), row.get("note"), id);
        }
        String update = ArchiveSql.update(table);
        if (update.isEmpty()) {
            return;
        }
        Fields fields = new Fields(shop.currency());
        List<Column> columns = ArchiveSql.own(table).stream()
                .filter(column -> !column.name().equals("id"))
                .toList();
        jdbc.update(update, statement -> {
            for (int i = 0; i < columns.size(); i++) {
                fields.set(
                        statement, i + 1, columns.get(i), row.get(columns.get(i).name()));
            }
            statement.setObject(columns.size() + 1, self.isWhole() ? (Object) THE_ONLY : id);
        });
    }

    private Cells cells() {
        return new Cells(shop.currency());
    }

    private static Family family(String table) {
        return Family.of(table).orElseThrow(() -> new UnreadableContent(table));
    }
}
