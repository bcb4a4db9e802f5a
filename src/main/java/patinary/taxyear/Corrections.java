package patinary.taxyear;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowMapper;
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
            having sum(amount_minor) <> 0""";

    private static final String IN_ORDER = " order by doc_date, document_id, origin_date, account";

    /** The last sealed day where the document is not after it, beside each of its rows. */
    private static final String NOTE = """
            select s.sealed_to, r.*
            from (select max(e.doc_date) as sealed_to
                  from year_seal y
                  join document e on e.id = y.id
                  where e.doc_date >= (select d.doc_date from document d where d.id = :document)) s
            left join (%s) r on true""".formatted(ROWS.formatted("document_id = :document")) + IN_ORDER;

    private final JdbcClient jdbc;
    private final TaxYears taxYears;

    Corrections(JdbcClient jdbc, TaxYears taxYears) {
        this.jdbc = jdbc;
        this.taxYears = taxYears;
    }

    /**
     * What the page of a document says about sealed years.
     *
     * @param firstOpenDay the first day that is not sealed, for a document of a sealed year; null for any other
     * @param rows what the document changed about a sealed year
     */
    public record Note(@Nullable LocalDate firstOpenDay, List<Row> rows) {}

    /** Of one document; for its page. */
    public Note note(UUID document) {
        List<Row> rows = new ArrayList<>();
        List<LocalDate> sealed = new ArrayList<>();
        RowMapper<Row> mapper = new DataClassRowMapper<>(Row.class);
        jdbc.sql(NOTE).param("document", document).query(row -> {
            Optional.ofNullable(row.getObject("sealed_to", LocalDate.class)).ifPresent(sealed::add);
            if (row.getObject("document_id") != null) {
                rows.add(mapper.mapRow(row, rows.size()));
            }
        });
        return new Note(sealed.isEmpty() ? null : sealed.get(0).plusDays(1), rows);
    }

    /** The tax year in which a day lies. */
    public int yearOf(LocalDate day) {
        return taxYears.of(day);
    }

    /** Of all documents of a year. Where nothing is sealed there is nothing to correct, and this need not be asked. */
    public List<Row> in(int year) {
        return jdbc.sql(ROWS.formatted("doc_date between ? and ?") + IN_ORDER)
                .params(taxYears.first(year), taxYears.last(year))
                .query(Row.class)
                .list();
    }
}
