package patinary.lists;

import java.time.LocalDate;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.DocumentKind;
import patinary.web.Window;

/**
 * How far back a page of a list reaches that begins with the latest documents. An index has their days in order, so the documents of these
 * days are put in order and not those of all years.
 */
@Component
public class LatestDays {

    private final JdbcClient jdbc;

    LatestDays(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Narrows a list of everything to the days that the window and all before it show. A list that is narrowed already stays as it is.
     *
     * @param list of documents of this kind, which it calls d
     */
    public void narrow(Where list, DocumentKind kind, Window window) {
        if (list.isEmpty()) {
            last(kind, window.end())
                    .ifPresent(
                            day -> list.and("d.kind_rank = " + kind.ordinal()).and("d.doc_date >= :day", "day", day));
        }
    }

    private Optional<LocalDate> last(DocumentKind kind, long documents) {
        return jdbc.sql("""
                        select doc_date from document where kind_rank = %d
                        order by kind_rank desc, doc_date desc, recorded_at desc
                        offset :before rows fetch next 1 row only""".formatted(kind.ordinal()))
                .param("before", documents - 1)
                .query(LocalDate.class)
                .optional();
    }
}
