package patinary.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import patinary.ledger.Trail;

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
     * @param owner the column that names the row of the root; it is not kept with the content. Without a letter where all rows of
     *     the table belong to it
     */
    record Member(ArchiveTable table, String owner) {

        boolean isWhole() {
            return owner.isEmpty();
        }

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

    /** What she says once for the whole shop, beside the settings themselves. */
    private static final List<String> OF_THE_SHOP =
            List.of("aim", "mark_down_step", "home_use", "set_aside_year", "tax_basis", "tax_mapping");

    /** Those of them whose forms are told by a version that they are old. */
    static final Set<String> VERSIONED = Set.of("aim", "home_use", "set_aside_year");

    private static final Map<String, Family> ALL = all();

    static Optional<Family> of(String root) {
        return Optional.ofNullable(ALL.get(root));
    }

    /** What rows of the archive's tables are kept of: the settings and everything that has an id, apart from pictures and what this is about. */
    static Set<String> roots() {
        return ALL.keySet();
    }

    Member self() {
        return new Member(root, root.name().equals(Trail.SETTINGS) ? "" : "id");
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
        families.put(
                Trail.SETTINGS,
                new Family(
                        ArchiveTables.named(Trail.SETTINGS),
                        OF_THE_SHOP.stream()
                                .map(table -> new Member(ArchiveTables.named(table), ""))
                                .toList()));
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

    /** By its key before all else: a payout's parts are its own, although a part may name a payout too. */
    private static Stream<Member> member(ArchiveTable root, ArchiveTable table) {
        return Stream.of(table.hasId() ? "" : table.key().get(0), GO_WITH_IT.getOrDefault(table.name(), ""))
                .filter(column -> !column.isEmpty())
                .filter(column ->
                        table.columns().get(table.position(column)).references().contains(root.name()))
                .limit(1)
                .map(column -> new Member(table, column));
    }
}
