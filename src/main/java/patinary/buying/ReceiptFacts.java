package patinary.buying;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the page of a document of buying shows beside the document itself: names, postings, what is owed. */
@Repository
class ReceiptFacts {

    /** A piece that a line brought, with what it cost there. */
    record PieceRow(
            UUID id,
            int line,
            String code,
            String title,
            @Nullable String state,
            long cost) {}

    /** A posting in words: the account's name is a message, the subject is data. */
    record PostingRow(String account, String subject, long amount) {}

    /** A payment of what was owed. */
    record PaidRow(UUID id, LocalDate date, String place, long amount) {}

    private static final String PIECES = """
            select p.id, rp.line, p.code, p.title, s.state,
                   coalesce((select sum(x.amount_minor) from posting x
                             where x.document_id = rp.receipt_id and x.piece_id = p.id), 0) as cost_minor
            from receipt_piece rp
            join piece p on p.id = rp.piece_id
            left join piece_state s on s.piece_id = p.id
            where rp.receipt_id = ? order by rp.line, p.code""";

    private static final String POSTINGS = """
            select x.account, x.amount_minor,
                   coalesce(p.code || ' ' || p.title, u.name, m.name, s.name, x.category, '') as subject
            from posting x
            left join piece p on p.id = x.piece_id
            left join supply u on u.id = x.supply_id
            left join money_place m on m.id = x.place_id
            left join source s on s.id = x.party_id
            where x.document_id = ? order by x.line""";

    private static final String PAID = """
            select b.id, d.doc_date, m.name, b.amount_minor
            from bill_paid b join document d on d.id = b.id join money_place m on m.id = b.place_id
            where b.receipt_id = ? order by d.doc_date, d.id""";

    private final JdbcClient jdbc;

    ReceiptFacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<PieceRow> pieces(UUID receipt) {
        return jdbc.sql(PIECES)
                .param(receipt)
                .query((row, number) -> new PieceRow(
                        row.getObject("id", UUID.class),
                        row.getInt("line"),
                        row.getString("code"),
                        row.getString("title"),
                        row.getString("state"),
                        row.getLong("cost_minor")))
                .list();
    }

    List<PostingRow> postings(UUID document) {
        return jdbc.sql(POSTINGS)
                .param(document)
                .query((row, number) ->
                        new PostingRow(row.getString("account"), row.getString("subject"), row.getLong("amount_minor")))
                .list();
    }

    List<PaidRow> paid(UUID receipt) {
        return jdbc.sql(PAID)
                .param(receipt)
                .query((row, number) -> new PaidRow(
                        row.getObject("id", UUID.class),
                        row.getDate("doc_date").toLocalDate(),
                        row.getString("name"),
                        row.getLong("amount_minor")))
                .list();
    }

    /** What is still owed for a receipt; zero where it is paid. */
    long owed(UUID receipt) {
        return jdbc.sql("select amount_minor from owed_by_shop where receipt_id = ?")
                .param(receipt)
                .query(Long.class)
                .optional()
                .orElse(0L);
    }
}
