package patinary.grounds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.lists.ListTotals;
import patinary.money.Amount;
import patinary.taxbasis.TaxYears;
import patinary.web.Page;
import patinary.web.Window;

/** Reads what rests on estimates, and what has no paper or payee. */
@Repository
@Transactional(readOnly = true)
class GroundBook {

    /** One document; the amount in minor units. */
    record Row(UUID documentId, LocalDate docDate, String kind, String what, long amountMinor) {

        /** Where the document can be looked at. */
        public String link() {
            return switch (kind) {
                case "RECEIPT" -> "/receipts/" + documentId;
                case "EXPENSE" -> "/expenses/" + documentId;
                case "BENCH_ENTRY" -> "/bench/" + documentId;
                case "SALE" -> "/sales/" + documentId;
                default -> "/opening";
            };
        }
    }

    /** How many documents, and what they come to. */
    record Total(Ground ground, long documents, long amountMinor) {}

    private record Sum(long documents, long amountMinor) {}

    /** What was bought, paid for or opened at a price that is marked as estimated; steps within a document cancel out. */
    private static final String ABOUT = """
            select p.document_id, p.doc_date, d.kind, d.note as what, cast(sum(p.amount_minor) as bigint) as amount_minor
            from posting p
            join document d on d.id = p.document_id
            where p.estimated and d.kind in ('RECEIPT', 'OPENING') and p.account not in ('OPENING', 'MONEY')
              and p.doc_date between :first and :last
            group by p.document_id, p.doc_date, d.kind, d.note
            having sum(p.amount_minor) > 0""";

    /** The latest count up to the end of the year settles every use up to its day. */
    private static final String BY_EYE = """
            select p.document_id, p.doc_date, d.kind, d.note as what, cast(-sum(p.amount_minor) as bigint) as amount_minor
            from posting p
            join document d on d.id = p.document_id
            left join (select c.supply_id, max(cd.doc_date) as last_day
                       from supply_count c
                       join document cd on cd.id = c.id
                       where c.place = 'BENCH' and cd.doc_date <= :last
                       group by c.supply_id) k on k.supply_id = p.supply_id
            where p.estimated and p.account = 'BENCH' and p.amount_minor < 0 and d.kind in ('BENCH_ENTRY', 'SALE')
              and (k.last_day is null or k.last_day < p.doc_date)
              and p.doc_date between :first and :last
            group by p.document_id, p.doc_date, d.kind, d.note""";

    private static final String PAPERS = """
            select d.id as document_id, d.doc_date, d.kind, coalesce(s.name, '') as what, r.till_total_minor as amount_minor
            from receipt r
            join document d on d.id = r.id
            left join source s on s.id = r.source_id
            where d.doc_date between :first and :last and %s
            union all
            select d.id, d.doc_date, d.kind, e.payee, e.amount_minor
            from expense e
            join document d on d.id = e.id
            where d.doc_date between :first and :last and %s""";

    private static final String NO_PHOTO =
            "not exists (select 1 from photo f where f.document_id = d.id" + " and f.taken_away_at is null)";

    private final JdbcClient jdbc;
    private final ListTotals totals;
    private final TaxYears years;

    GroundBook(JdbcClient jdbc, ListTotals totals, TaxYears years) {
        this.jdbc = jdbc;
        this.totals = totals;
        this.years = years;
    }

    /** What all documents come to that have a ground and an amount above {@code over}. */
    Total total(Ground ground, int year, Amount over) {
        String question =
                "select count(*) as documents, cast(coalesce(sum(x.amount_minor), 0) as bigint) as amount_minor"
                        + from(ground);
        Map<String, Object> parameters = parameters(year, over);
        // A photo is no change of the books, so what lacks one cannot be kept.
        Sum sum = ground == Ground.NO_PAPER
                ? jdbc.sql(question).params(parameters).query(Sum.class).single()
                : totals.of(question, parameters, Sum.class);
        return new Total(ground, sum.documents(), sum.amountMinor());
    }

    /** The documents, the greatest amount first. */
    Page<Row> rows(Ground ground, int year, Amount over, Window window) {
        List<Row> rows = jdbc.sql("select x.*" + from(ground)
                        + " order by x.amount_minor desc, x.doc_date, x.document_id"
                        + " offset :offset rows fetch next :size rows only")
                .params(parameters(year, over))
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total(ground, year, over).documents());
    }

    /** How many receipts and expenses the year has. */
    long papers(int year) {
        return jdbc.sql(
                        "select count(*) from document where kind in ('RECEIPT', 'EXPENSE') and doc_date between ? and ?")
                .params(years.first(year), years.last(year))
                .query(Long.class)
                .single();
    }

    private static String from(Ground ground) {
        String rows = switch (ground) {
            case ABOUT -> ABOUT;
            case BY_EYE -> BY_EYE;
            case NO_PAPER -> PAPERS.formatted(NO_PHOTO, NO_PHOTO);
            case NO_PAYEE -> PAPERS.formatted("r.source_id is null", "e.payee = ''");
        };
        return " from (" + rows + ") x where x.amount_minor > :over";
    }

    private Map<String, Object> parameters(int year, Amount over) {
        return Map.of("first", years.first(year), "last", years.last(year), "over", over.minor());
    }
}
