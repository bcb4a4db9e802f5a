package patinary.spending;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.lists.ListTotals;
import patinary.money.Amount;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** Reads the list of money documents and what the money places hold. */
@Repository
@Transactional(readOnly = true)
class MoneyReports {

    /** Which documents to list; an empty text leaves a filter out. */
    record Wanted(
            String words,
            String kind,
            String category,
            @Nullable Integer year) {}

    /** One document of the list; the amount is in minor units and never below zero. */
    record Row(
            UUID id,
            LocalDate docDate,
            String note,
            String kind,
            String flow,
            @Nullable String category,
            String title,
            String place,
            long amountMinor) {}

    /** What the documents of one kind come to. */
    record Total(String kind, String flow, long documents, long amountMinor) {}

    /** A money place and what it holds. */
    record Balance(UUID id, String name, String kind, long amountMinor) {}

    private static final String WHERE = """
             from money_document m
            where %s
              and (:kind = '' or m.kind = :kind)
              and (:category = '' or m.category = :category)
              and m.doc_date between :first and :last
            """.formatted(Words.in("m.title || ' ' || m.note || ' ' || m.place"));

    private static final LocalDate EARLIEST = LocalDate.of(1, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(9999, 12, 31);

    private enum Kept {
        BALANCES,
        YEARS
    }

    private final JdbcClient jdbc;
    private final ListTotals totals;
    private final Readings readings;

    MoneyReports(JdbcClient jdbc, ListTotals totals, Readings readings) {
        this.jdbc = jdbc;
        this.totals = totals;
        this.readings = readings;
    }

    Page<Row> rows(Wanted wanted, Window window) {
        List<Row> rows = jdbc.sql("select m.*" + WHERE
                        + " order by m.doc_date desc, m.kind, m.id offset :offset rows fetch next :size rows only")
                .params(parameters(wanted))
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        long total = totals.of("select count(*)" + WHERE, parameters(wanted), Long.class);
        return Page.of(window, rows, total);
    }

    /** The totals of everything that the filters let through, on all pages of the list. */
    List<Total> totals(Wanted wanted) {
        return jdbc.sql(
                        "select m.kind, m.flow, count(*) as documents, cast(sum(m.amount_minor) as bigint) as amount_minor"
                                + WHERE + " group by m.kind, m.flow order by m.kind, m.flow")
                .params(parameters(wanted))
                .query(Total.class)
                .list();
    }

    /** The years in which there are money documents, the latest first. */
    List<Integer> years() {
        return readings.ahead(
                Kept.YEARS,
                () -> jdbc.sql(
                                "select distinct cast(extract(year from m.doc_date) as integer) as y from money_document m order by y desc")
                        .query(Integer.class)
                        .list());
    }

    /** Every money place, also those that hold nothing. */
    List<Balance> balances() {
        return readings.ahead(
                Kept.BALANCES, () -> jdbc.sql("""
                        select mp.id, mp.name, mp.kind, coalesce(ml.amount_minor, 0) as amount_minor
                        from money_place mp
                        left join money_left ml on ml.place_id = mp.id
                        order by lower(mp.name)""").query(Balance.class).list());
    }

    /** What lies at one money place by the books, in minor units. */
    long balance(UUID place) {
        return balances().stream()
                .filter(one -> one.id().equals(place))
                .mapToLong(Balance::amountMinor)
                .sum();
    }

    /** Sales tax collected and not yet paid over, by the books. */
    Amount salesTaxDue() {
        long minor = totals.of(
                "select coalesce(sum(amount_minor), 0) from posting where account = 'SALES_TAX_DUE'",
                Map.of(),
                Long.class);
        return Amount.of(minor).negated();
    }

    private static Map<String, Object> parameters(Wanted wanted) {
        Integer year = wanted.year();
        return Map.of(
                "words",
                Words.anywhere(wanted.words()),
                "kind",
                wanted.kind(),
                "category",
                wanted.category(),
                "first",
                year == null ? EARLIEST : LocalDate.of(year, 1, 1),
                "last",
                year == null ? LATEST : LocalDate.of(year, 12, 31));
    }
}
