package patinary.taxyear;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.taxbasis.TaxYears;

/** Reads the postings of a year one by one, for the seal. */
@Repository
@Transactional(readOnly = true)
class YearRows {

    /** A posting with the names that stand beside it. */
    record Posted(
            UUID documentId,
            int line,
            LocalDate docDate,
            String kind,
            String note,
            String account,
            String category,
            @Nullable UUID placeId,
            @Nullable UUID pieceId,
            @Nullable UUID supplyId,
            @Nullable UUID partyId,
            @Nullable UUID originId,
            boolean estimated,
            long amountMinor,
            BigDecimal quantity,
            @Nullable String place,
            @Nullable String pieceCode,
            @Nullable String pieceTitle,
            @Nullable String supply,
            @Nullable String party,
            String part,
            @Nullable String purchase,
            boolean packed) {}

    private final JdbcClient jdbc;
    private final TaxYears taxYears;

    YearRows(JdbcClient jdbc, TaxYears taxYears) {
        this.jdbc = jdbc;
        this.taxYears = taxYears;
    }

    /** All postings of the year, by day and document. */
    List<Posted> all(int year) {
        return jdbc.sql("select * from year_row where doc_date between :first and :last"
                        + " order by doc_date, document_id, line")
                .param("first", taxYears.first(year))
                .param("last", taxYears.last(year))
                .query(Posted.class)
                .list();
    }
}
