package patinary.taxyear;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.taxbasis.TaxYears;

/** Reads a year from the postings, by the books: how the year is counted for tax is derived beside them. */
@Repository
@Transactional(readOnly = true)
class YearBooks {

    /** One document's part in a line of the year; amount in minor units, debit positive. */
    record Row(UUID documentId, LocalDate docDate, String kind, String note, String what, long amountMinor) {

        Amount amount() {
            return Amount.of(amountMinor);
        }

        /** Where the document can be looked at. */
        public String link() {
            String path = switch (kind) {
                case "RECEIPT" -> "/receipts/";
                case "SUPPLIER_RETURN" -> "/supplier-returns/";
                case "SALE" -> "/sales/";
                case "BENCH_ENTRY" -> "/bench/";
                case "TAKING" -> "/supplies/takings/";
                case "COUNT" -> "/supplies/counts/";
                case "EXPENSE" -> "/expenses/";
                case "TRIP" -> "/trips/";
                case "OTHER_INCOME" -> "/other-income/";
                default -> "";
            };
            return path.isEmpty() ? "" : path + documentId;
        }

        /** The name of the kind in the message files. */
        public String kindKey() {
            return "taxyear.kind." + kind.toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** One thing in stock at the end of a day; a piece has no quantity. */
    record StockRow(
            String account,
            String code,
            String title,
            @Nullable BigDecimal quantity,
            long amountMinor) {}

    /**
     * Something that was bought to be sold and then used by herself.
     *
     * @param dimension what its quantity is measured by, in that dimension's base unit
     * @param ownUseTax whether it is marked that tax on own use may be owed
     */
    record Taken(
            UUID takingId,
            LocalDate docDate,
            String supplyLine,
            String supply,
            String dimension,
            BigDecimal quantity,
            boolean ownUseTax,
            long costMinor,
            String note) {}

    /** The first and the last day of anything posted; both null in an empty shop. */
    private record Ends(@Nullable LocalDate first, @Nullable LocalDate last) {}

    private static final String STOCK_BEFORE = """
            select coalesce(sum(amount_minor), 0) from posting
            where account in ('PIECES', 'BENCH', 'SHELF') and doc_date < ?""";

    /** By the kept sums of each piece's days and each document's supplies: ten years of postings need not be added up. */
    private static final String STOCK = """
            select 'PIECES' as account, p.code, p.title, cast(null as numeric(30, 14)) as quantity, s.amount_minor
            from (select piece_id, cast(sum(amount_minor) as bigint) as amount_minor
                  from piece_stock
                  where doc_date <= :day
                  group by piece_id
                  having sum(amount_minor) <> 0) s
            left join piece p on p.id = s.piece_id
            union all
            select s.place, '', su.name, s.quantity, s.cost_minor
            from (select o.place, o.supply_id, sum(o.quantity) as quantity, cast(sum(o.cost_minor) as bigint) as cost_minor
                  from document_stock o
                  left join document d on d.id = o.document_id
                  where d.doc_date <= :day
                  group by o.place, o.supply_id
                  having sum(o.cost_minor) <> 0 or sum(o.quantity) <> 0) s
            left join supply su on su.id = s.supply_id
            order by 1 desc, 2, 3""";

    private static final String BY_DOCUMENT = """
            select r.document_id, r.doc_date, r.kind, r.note,
                   coalesce(min(r.piece_code || ' ' || r.piece_title), min(r.supply), '') as what,
                   cast(sum(r.amount_minor) as bigint) as amount_minor
            from year_row r
            where r.doc_date between :first and :last and %s
            group by r.document_id, r.doc_date, r.kind, r.note
            having sum(r.amount_minor) <> 0
            order by r.doc_date, r.document_id""";

    private record Parts(LocalDate first, LocalDate last) {}

    private record Before(LocalDate first) {}

    private final JdbcClient jdbc;
    private final TaxYears taxYears;
    private final Readings readings;

    YearBooks(JdbcClient jdbc, TaxYears taxYears, Readings readings) {
        this.jdbc = jdbc;
        this.taxYears = taxYears;
        this.readings = readings;
    }

    LocalDate first(int year) {
        return taxYears.first(year);
    }

    LocalDate last(int year) {
        return taxYears.last(year);
    }

    /** Everything posted in the year, in one pass. */
    YearParts parts(int year) {
        LocalDate first = first(year);
        LocalDate last = last(year);
        return readings.ahead(new Parts(first, last), () -> parts(first, last));
    }

    private YearParts parts(LocalDate first, LocalDate last) {
        return new YearParts(jdbc.sql("""
                        select account, category, part, purchase, packed, cast(sum(amount_minor) as bigint) as amount_minor
                        from year_row
                        where doc_date between :first and :last
                        group by account, category, part, purchase, packed""")
                .param("first", first)
                .param("last", last)
                .query(YearParts.Part.class)
                .list());
    }

    /** Profit by the ledger from one day to another, both included. */
    Amount profit(LocalDate from, LocalDate to) {
        return Amount.of(
                jdbc.sql("select coalesce(sum(profit_minor), 0) from document_profit where doc_date between ? and ?")
                        .params(from, to)
                        .query(Long.class)
                        .single());
    }

    /** What lay in stock when the year began, at cost. */
    Amount stockBefore(int year) {
        LocalDate first = first(year);
        return readings.ahead(
                new Before(first),
                () -> Amount.of(
                        jdbc.sql(STOCK_BEFORE).param(first).query(Long.class).single()));
    }

    /** The documents behind account-and-category keys, as {@link TaxTable#key} writes them. */
    List<Row> rowsOf(int year, Collection<String> keys) {
        if (keys.isEmpty()) {
            return List.of();
        }
        return jdbc.sql(BY_DOCUMENT.formatted(
                        "r.part in ('INCOME', 'EXPENSE', 'COST') and r.account || '|' || r.category in (:keys)"))
                .param("first", first(year))
                .param("last", last(year))
                .param("keys", keys)
                .query(Row.class)
                .list();
    }

    /** The documents that brought goods or materials; own use, and what sales were packed in, are taken off. */
    List<Row> purchases(int year, boolean materials) {
        // A receipt's cost for a piece the owner already took is both bought and withdrawn: it cancels out.
        String goods = "(r.purchase = 'GOODS' and r.part <> 'OWN_USE'"
                + " or r.part = 'OWN_USE' and r.kind not in ('RECEIPT', 'SUPPLIER_RETURN'))";
        String off = materials ? "r.packed" : "r.part = 'OWN_USE'";
        return jdbc.sql(BY_DOCUMENT
                        .formatted(materials ? "(r.purchase = 'MATERIALS' or r.packed)" : goods)
                        .replace(
                                "sum(r.amount_minor)",
                                "sum(case when " + off + " then -r.amount_minor else r.amount_minor end)"))
                .param("first", first(year))
                .param("last", last(year))
                .query(Row.class)
                .list();
    }

    /** What was in stock at the end of a day, pieces first. */
    List<StockRow> stock(LocalDate day) {
        return jdbc.sql(STOCK).param("day", day).query(StockRow.class).list();
    }

    /** What was taken from the retail shelf for own use, by the day of the taking. */
    List<Taken> taken(int year) {
        return jdbc.sql("""
                        select taking_id, doc_date, supply_line, supply, dimension, quantity, own_use_tax, cost_minor, note
                        from taking_cost
                        where doc_date between ? and ?
                        order by doc_date, cast(taking_id as varchar(36))""").params(first(year), last(year)).query(Taken.class).list();
    }

    /** Business miles of the year. */
    BigDecimal miles(int year) {
        return jdbc.sql("select coalesce(sum(t.miles), 0) from trip t join document d on d.id = t.id "
                        + "where d.doc_date between ? and ?")
                .params(first(year), last(year))
                .query(BigDecimal.class)
                .single();
    }

    /** The years in which anything was posted, the latest first. */
    List<Integer> years() {
        Ends ends = jdbc.sql("select min(doc_date) as first, max(doc_date) as last from posting")
                .query(Ends.class)
                .single();
        return ends.first() == null || ends.last() == null
                ? List.of()
                : posted(IntStream.rangeClosed(taxYears.of(ends.first()), taxYears.of(ends.last()))
                        .boxed()
                        .toList());
    }

    /** Each year is looked for by its days; to list the days of all postings would mean to read them all. */
    private List<Integer> posted(List<Integer> years) {
        String days = years.stream()
                .map(year -> "(%d, date '%s', date '%s')".formatted(year, first(year), last(year)))
                .collect(Collectors.joining(", "));
        return jdbc.sql("select y.tax_year from (values " + days + ") y (tax_year, first_day, last_day) "
                        + "where exists (select 1 from posting p where p.doc_date between y.first_day and y.last_day) "
                        + "order by y.tax_year desc")
                .query(Integer.class)
                .list();
    }
}
