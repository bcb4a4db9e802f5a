package patinary.buyers;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** Buyers as sales and payments name them: one for each name, whatever its case. */
@Repository
@Transactional(readOnly = true)
class Buyers {

    private static final String NAMED = """
            (select s.id, s.buyer, d.doc_date, 1 as is_sale from sale s join document d on d.id = s.id where s.buyer <> ''
             union all
             select p.id, p.buyer, d.doc_date, 0 from payment p join document d on d.id = p.id where p.buyer <> '')""";

    private static final String BUYERS = """
            from (select lower(n.buyer) as grouped, min(n.buyer) as name, cast(sum(n.is_sale) as bigint) as sales,
                         max(n.doc_date) as last_on
                  from\s""" + NAMED + " n group by lower(n.buyer)) g\n";

    private static final String OWED = """
            coalesce((select cast(sum(o.amount_minor) as bigint) from owed_to_shop o join sale s on s.id = o.sale_id
                      where lower(s.buyer) = g.grouped), 0)""";

    private static final String ROW = "select (select n.id from " + NAMED + """
             n where lower(n.buyer) = g.grouped order by n.doc_date desc, n.id fetch first 1 row only) as document_id,
                   g.name, g.sales, g.last_on,\s""" + OWED + " as owed_minor ";

    private final JdbcClient jdbc;

    Buyers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By name. @param words a part of the name, or empty */
    Page<Buyer> page(String words, Window window) {
        String like = Words.anywhere(words);
        long total = jdbc.sql("select count(*) " + BUYERS + "where g.grouped like :like escape '!'")
                .param("like", like)
                .query(Long.class)
                .single();
        List<Buyer> rows = jdbc.sql(ROW + BUYERS + "where g.grouped like :like escape '!'"
                        + " order by g.grouped offset :offset rows fetch next :size rows only")
                .param("like", like)
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Buyer.class)
                .list();
        return Page.of(window, rows, total);
    }

    /** Who has the name that stands on a sale or a payment. */
    Optional<Buyer> of(UUID document) {
        return jdbc.sql(ROW + BUYERS + "where g.grouped = (select lower(n.buyer) from " + NAMED
                        + " n where n.id = :id)")
                .param("id", document)
                .query(Buyer.class)
                .optional();
    }

    /** Names not erased whose latest sale or payment was before a day and who owe nothing, by name. */
    List<Buyer> before(LocalDate day) {
        return jdbc
                .sql("select * from (" + ROW + BUYERS
                        + "where g.last_on < :day) b where b.owed_minor = 0 order by lower(b.name)")
                .param("day", day)
                .query(Buyer.class)
                .list()
                .stream()
                .filter(buyer -> !buyer.isErased())
                .toList();
    }

    /** All names in use. */
    List<String> names() {
        return jdbc.sql("select distinct n.buyer from " + NAMED + " n")
                .query(String.class)
                .list();
    }
}
