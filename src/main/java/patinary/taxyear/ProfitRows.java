package patinary.taxyear;

import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.web.Page;
import patinary.web.Window;

/** Reads the documents that make up the profit by the books of some days, each with what it brought or took. */
@Repository
@Transactional(readOnly = true)
class ProfitRows {

    /** The documents of the page are found first; only their postings are added up. */
    private static final String ROWS = """
            select r.document_id, r.doc_date, r.kind, r.note,
                   coalesce(min(r.piece_code || ' ' || r.piece_title), min(r.supply), '') as what,
                   cast(-sum(r.amount_minor) as bigint) as amount_minor
            from (select document_id, doc_date
                  from document_profit
                  where doc_date between :first and :last
                  order by doc_date, cast(document_id as varchar(36))
                  offset :offset rows fetch next :size rows only) shown
            join year_row r on r.document_id = shown.document_id and r.doc_date = shown.doc_date
            where r.part in ('INCOME', 'EXPENSE', 'COST')
            group by r.document_id, r.doc_date, r.kind, r.note
            order by r.doc_date, cast(r.document_id as varchar(36))""";

    private static final int MOST = Integer.MAX_VALUE;

    /**
     * Some documents and the profit of all that were asked for.
     *
     * @param rows with what each brought; what it took is below zero
     */
    record Answer(Page<YearBooks.Row> rows, Amount profit) {}

    private final JdbcClient jdbc;
    private final YearBooks books;

    ProfitRows(JdbcClient jdbc, YearBooks books) {
        this.jdbc = jdbc;
        this.books = books;
    }

    Answer page(LocalDate first, LocalDate last, Window window) {
        long total = jdbc.sql("select count(*) from document_profit where doc_date between ? and ?")
                .params(first, last)
                .query(Long.class)
                .single();
        List<YearBooks.Row> rows = rows(first, last, window.offset(), window.size());
        return new Answer(Page.of(window, rows, total), books.profit(first, last));
    }

    List<YearBooks.Row> all(LocalDate first, LocalDate last) {
        return rows(first, last, 0, MOST);
    }

    private List<YearBooks.Row> rows(LocalDate first, LocalDate last, long offset, int size) {
        return jdbc.sql(ROWS)
                .param("first", first)
                .param("last", last)
                .param("offset", offset)
                .param("size", size)
                .query(YearBooks.Row.class)
                .list();
    }
}
