package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.lists.ListTotals;
import patinary.money.Amount;
import patinary.money.Shares;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** Reads the log of trips. */
@Repository
@Transactional(readOnly = true)
class TripLog {

    /** Which trips to list; an empty text leaves a filter out. */
    record Wanted(
            String words, @Nullable UUID vehicle, @Nullable Integer year) {}

    /** One trip; its amount in minor units is what the books say. */
    record Row(
            UUID id,
            LocalDate docDate,
            String note,
            String purpose,
            String startPlace,
            String destination,
            BigDecimal miles,
            @Nullable String vehicle,
            long amountMinor,
            long receipts) {}

    /** What all trips come to that the filters let through. */
    record Totals(long trips, BigDecimal miles, long amountMinor) {}

    /** A receipt of a trip, or one of its day that names none. */
    record Bought(UUID id, LocalDate docDate, String source, long tillTotalMinor, long pieces) {}

    /** How a trip is shared among the pieces that were bought on it; the least and the most differ by a cent at most. */
    record PieceShare(int pieces, Amount least, Amount most) {}

    private static final String WHERE =
            """
             from trip_log t
            where %s
              and (:any or t.vehicle_id = :vehicle)
              and t.doc_date between :first and :last
            """.formatted(Words.in("t.purpose || ' ' || t.start_place || ' ' || t.destination || ' ' || t.note"));

    private static final String BOUGHT = """
            select r.id, d.doc_date, coalesce(s.name, '') as source, r.till_total_minor,
                   (select count(distinct rp.piece_id) from receipt_piece rp where rp.receipt_id = r.id) as pieces
            from receipt r
            join document d on d.id = r.id
            left join source s on s.id = r.source_id
            """;

    private final JdbcClient jdbc;
    private final ListTotals totals;

    TripLog(JdbcClient jdbc, ListTotals totals) {
        this.jdbc = jdbc;
        this.totals = totals;
    }

    Page<Row> rows(Wanted wanted, Window window) {
        List<Row> rows = jdbc.sql("select t.*" + WHERE
                        + " order by t.doc_date desc, t.id offset :offset rows fetch next :size rows only")
                .params(parameters(wanted))
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, totals(wanted).trips());
    }

    Totals totals(Wanted wanted) {
        return totals.of(
                "select count(*) as trips, coalesce(sum(t.miles), 0) as miles,"
                        + " cast(coalesce(sum(t.amount_minor), 0) as bigint) as amount_minor" + WHERE,
                parameters(wanted),
                Totals.class);
    }

    /** The years in which there are trips, the latest first. */
    List<Integer> years() {
        return jdbc.sql(
                        "select distinct cast(extract(year from t.doc_date) as integer) as y from trip_log t order by y desc")
                .query(Integer.class)
                .list();
    }

    List<Bought> bought(UUID trip) {
        return jdbc.sql(BOUGHT + " where r.trip_id = ? order by d.doc_date, r.id")
                .param(trip)
                .query(Bought.class)
                .list();
    }

    /** The receipts of a day that name no trip. */
    List<Bought> without(LocalDate day) {
        return jdbc.sql(BOUGHT + " where r.trip_id is null and d.doc_date = ? order by r.id")
                .param(day)
                .query(Bought.class)
                .list();
    }

    /** Shared equally over the distinct pieces on the receipts of the trip, as the true cost of a piece does. */
    PieceShare share(UUID trip, Amount whole) {
        int pieces = jdbc.sql("select count(distinct rp.piece_id) from receipt_piece rp"
                        + " join receipt r on r.id = rp.receipt_id where r.trip_id = ?")
                .param(trip)
                .query(Integer.class)
                .single();
        if (pieces == 0) {
            return new PieceShare(0, Amount.ZERO, Amount.ZERO);
        }
        List<Amount> shares = Shares.equally(whole, pieces);
        return new PieceShare(pieces, shares.get(pieces - 1), shares.get(0));
    }

    private static Map<String, Object> parameters(Wanted wanted) {
        Integer year = wanted.year();
        UUID vehicle = wanted.vehicle();
        return Map.of(
                "words",
                Words.anywhere(wanted.words()),
                "any",
                vehicle == null,
                "vehicle",
                vehicle == null ? new UUID(0, 0) : vehicle,
                "first",
                LocalDate.of(year == null ? 1 : year, 1, 1),
                "last",
                LocalDate.of(year == null ? 9999 : year, 12, 31));
    }
}
