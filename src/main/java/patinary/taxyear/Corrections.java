package patinary.taxyear;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.taxbasis.TaxYears;

/** What documents of an open year changed about an earlier, sealed one; also asked by the pages of documents. */
@Component("corrections")
@Transactional(readOnly = true)
public class Corrections {

    /**
     * What one document changed about one document of a sealed year, on one account.
     *
     * @param originKind the kind of the document that it corrects; empty where it corrects a piece that had gone
     * @param what the piece or supply concerned, where it is one
     * @param sealedYear the year whose seal posts it, where no document does
     */
    public record Row(
            UUID documentId,
            LocalDate docDate,
            String kind,
            String account,
            String originKind,
            @Nullable LocalDate originDate,
            String what,
            @Nullable Integer sealedYear,
            long amountMinor) {

        /** Where the correcting document can be looked at, or nothing. */
        public String link() {
            return sealedYear != null
                    ? "/year/" + sealedYear + "/seal"
                    : new YearBooks.Row(documentId, docDate, kind, "", "", 0).link();
        }

        /** The name of a kind in the message files. */
        public String kindKey(String of) {
            return new YearBooks.Row(documentId, docDate, of, "", "", 0).kindKey();
        }
    }

    private static final String ROWS = """
            select document_id, doc_date, kind, account, origin_kind, origin_date, max(what) as what, max(tax_year) as sealed_year,
                   cast(sum(amount_minor) as bigint) as amount_minor
            from sealed_correction
            where %s
            group by document_id, doc_date, kind, account, origin_id, origin_kind, origin_date
            having sum(amount_minor) <> 0
            order by doc_date, document_id, origin_date, account""";

    private final JdbcClient jdbc;
    private final TaxYears taxYears;

    Corrections(JdbcClient jdbc, TaxYears taxYears) {
        this.jdbc = jdbc;
        this.taxYears = taxYears;
    }

    /** Of one document; for its page. */
    public List<Row> of(UUID document) {
        return jdbc.sql(ROWS.formatted("document_id = ?"))
                .param(document)
                .query(Row.class)
                .list();
    }

    /** The first day that is not sealed, for a document of a sealed year; null for any other. */
    public @Nullable LocalDate firstOpenDay(UUID document) {
        return jdbc.sql("""
                        select max(s.doc_date)
                        from year_seal y
                        join document s on s.id = y.id
                        where s.doc_date >= (select d.doc_date from document d where d.id = ?)""").param(document).query(LocalDate.class).list().stream()
                .filter(Objects::nonNull)
                .map(last -> last.plusDays(1))
                .findFirst()
                .orElse(null);
    }

    /** The tax year in which a day lies. */
    public int yearOf(LocalDate day) {
        return taxYears.of(day);
    }

    /** Of all documents of a year. Where nothing is sealed there is nothing to correct, and no posting is looked at. */
    public List<Row> in(int year) {
        if (!isAnySealed()) {
            return List.of();
        }
        return jdbc.sql(ROWS.formatted("doc_date between ? and ?"))
                .params(taxYears.first(year), taxYears.last(year))
                .query(Row.class)
                .list();
    }

    private boolean isAnySealed() {
        return jdbc.sql("select exists (select 1 from year_seal)")
                .query(Boolean.class)
                .single();
    }
}
