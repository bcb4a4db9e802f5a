package patinary.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A table and those whose rows belong to its rows: they have no id of their own and their key begins with its id, or they go
 * when it goes.
 *
 * @param members in the order of the archive, so that rows can go in one after the other
 */
record Family(ArchiveTable root, List<Member> members) {

    /**
     * One table of a family.
     *
     * @param owner the column that names the row of the root; it is not kept with the content
     */
    record Member(ArchiveTable table, String owner) {

        Column ownerColumn() {
            return table.columns().get(table.position(owner));
        }
    }

    /** Tables that a removal clears although their rows have a key of their own, each with the column that names what is removed. */
    private static final Map<String, String> GO_WITH_IT = Map.of(
            "mail_loss", "sale_id",
            "channel_charge", "expense_id",
            "payout_part", "document_id",
            "gross_other_side", "document_id");

    private static final Map<String, Family> ALL = all();

    static Optional<Family> of(String root) {
        return Optional.ofNullable(ALL.get(root));
    }

    /** What rows of the archive's tables are kept of: everything that has an id, apart from pictures and what this is about. */
    static Set<String> roots() {
        return ALL.keySet();
    }

    Member self() {
        return new Member(root, "id");
    }

    /** The members whose rows must be written anew where those of some are: rows within rows that go would be left hanging. */
    List<Member> with(Set<String> changed) {
        Set<String> all = new HashSet<>(changed);
        List<Member> several = new ArrayList<>();
        for (Member member : members) {
            if (all.contains(member.table().name())
                    || member.table().within().stream().anyMatch(within -> all.contains(within.table()))) {
                all.add(member.table().name());
                several.add(member);
            }
        }
        return several;
    }

    private static Map<String, Family> all() {
        Map<String, Family> families = new LinkedHashMap<>();
        ArchiveTables.ALL.stream()
                .filter(table -> table.hasId() && !table.name().equals(PhotoTables.NAME))
                .filter(table -> !table.name().equals(HistoryTables.NAME))
                .forEach(root -> families.put(root.name(), new Family(root, members(root))));
        return families;
    }

    private static List<Member> members(ArchiveTable root) {
        return ArchiveTables.ALL.stream()
                .filter(table -> table != root && !SealTables.ALL.contains(table))
                .flatMap(table -> member(root, table))
                .toList();
    }

    private static Stream<Member> member(ArchiveTable root, ArchiveTable table) {
        return Stream.of(table.hasId() ? "" : table.key().get(0), GO_WITH_IT.getOrDefault(table.name(), ""))
                .filter(column -> !column.isEmpty())
                .filter(column ->
                        table.columns().get(table.position(column)).references().contains(root.name()))
                .map(column -> new Member(table, column));
    }
}
