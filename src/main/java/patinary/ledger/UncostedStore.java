package patinary.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The stored uses that no receipt has given a cost yet: the one place that writes them. */
@Repository
class UncostedStore {

    private record Where(UUID document, UUID supply, StockPlace place) {}

    private final JdbcTemplate jdbc;

    UncostedStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    List<Replay.Uncosted> all() {
        return jdbc.query(
                """
                select u.*, d.kind_rank, d.doc_date from uncosted_use u join document d on d.id = u.document_id
                order by u.document_id, u.supply_id, u.place, u.line""",
                (row, number) -> new Replay.Uncosted(
                        PostingStore.reference(row),
                        row.getObject("supply_id", UUID.class),
                        StockPlace.valueOf(row.getString("place")),
                        row.getBigDecimal("quantity"),
                        row.getBoolean("through_pot")));
    }

    /** Removes those of documents that are removed themselves. */
    void forget(Collection<UUID> documents) {
        jdbc.batchUpdate(
                "delete from uncosted_use where document_id = ?",
                documents.stream().map(id -> new Object[] {id}).toList());
    }

    /** All uses of these supplies that have no cost. */
    void replace(Collection<UUID> supplies, Collection<Replay.Uncosted> uses) {
        jdbc.batchUpdate(
                "delete from uncosted_use where supply_id = ?",
                supplies.stream().map(id -> new Object[] {id}).toList());
        insert(uses);
    }

    void replaceAll(Collection<Replay.Uncosted> uses) {
        jdbc.update("delete from uncosted_use");
        insert(uses);
    }

    private void insert(Collection<Replay.Uncosted> uses) {
        Map<Where, Integer> lines = new HashMap<>();
        List<Object[]> rows = uses.stream()
                .map(use -> new Object[] {
                    use.document().id(),
                    lines.merge(new Where(use.document().id(), use.supply(), use.place()), 1, Integer::sum),
                    use.supply(),
                    use.place().name(),
                    use.quantity(),
                    use.throughPot()
                })
                .toList();
        jdbc.batchUpdate(
                "insert into uncosted_use (document_id, line, supply_id, place, quantity, through_pot) values (?, ?, ?, ?, ?, ?)",
                rows);
    }
}
