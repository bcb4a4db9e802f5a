package patinary.ledger;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The postings that were sealed, kept beside the derived ones. */
@Repository
class SealStore {

    private static final String ALL = """
            select p.*, d.kind_rank from sealed_posting p join document d on d.id = p.document_id
            order by p.document_id, p.line""";

    private static final String FIELDS = "document_id, line, doc_date, account, place_id, category, piece_id,"
            + " supply_id, party_id, origin_id, estimated, amount_minor, quantity, move_no, meant_piece_id";

    private final JdbcTemplate jdbc;

    SealStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** What was sealed, of all seals, each document's postings in their order. */
    List<Entry> all() {
        return jdbc.query(ALL, (row, number) -> PostingStore.read(row));
    }

    boolean isEmpty() {
        return jdbc.queryForList("select 1 from sealed_posting fetch first 1 rows only")
                .isEmpty();
    }

    /** Keeps the stored postings up to a seal's day that no earlier seal keeps. */
    void keep(DocumentRef seal) {
        jdbc.update(
                "insert into sealed_posting (year_seal_id, " + FIELDS + ") select cast(? as uuid), " + FIELDS
                        + " from posting p where p.doc_date <= ? and not exists (select 1 from sealed_posting k"
                        + " where k.document_id = p.document_id and k.line = p.line)",
                seal.id(),
                seal.date());
    }

    /** Nothing is kept of a seal that is taken off. */
    void forget(UUID seal) {
        jdbc.update("delete from sealed_posting where year_seal_id = ?", seal);
    }
}
