package patinary.yearfolder;

import static patinary.yearfolder.Column.amount;
import static patinary.yearfolder.Column.day;
import static patinary.yearfolder.Column.number;
import static patinary.yearfolder.Column.text;
import static patinary.yearfolder.Column.yes;

import java.util.List;
import org.springframework.stereotype.Component;
import patinary.covering.ReportedGross;

/** Trips, sales tax, and what processors took in, kept, paid out and reported. */
@Component
class MoneyTables {

    static final String TRIPS = "trips";
    static final String BALANCES = "processor-balances";
    static final String REPORTED = "reported-gross";

    private static final String DRIVEN = """
            select d.doc_date, t.id, t.start_place, t.destination, t.purpose, t.miles, t.rate_tenths,
                   coalesce((select cast(sum(p.amount_minor) as bigint) from posting p
                             where p.document_id = t.id and p.account = 'VEHICLE'), 0) as amount, d.note
            from trip t
            join document d on d.id = t.id
            where d.doc_date between :first and :last
            order by d.doc_date, t.id""";

    private static final String TAXED = """
            select r.doc_date, r.document_id, r.kind, coalesce(t.name, '') as place, r.taxed, r.price_minor, r.shipping_minor,
                   r.due_minor, r.passed_minor
            from sales_tax_row r
            left join tax_place t on t.id = r.tax_place_id
            where r.doc_date between :first and :last
            order by r.doc_date, r.document_id""";

    private static final String PAID_OUT = """
            select d.doc_date, o.id, f.name as from_place, t.name as to_place, o.amount_minor, o.fee_minor, c.total_minor as covers,
                   cast(o.amount_minor + o.fee_minor - c.total_minor as bigint) as difference, d.note
            from payout o
            join document d on d.id = o.id
            join money_place f on f.id = o.from_place_id
            join money_place t on t.id = o.to_place_id
            left join payout_cover c on c.payout_id = o.id
            where d.doc_date between :first and :last
            order by d.doc_date, o.id""";

    /** For each balance: what was there, what buyers paid in, what else moved it, and, negative, what is there: zero in all. */
    private static final String BALANCE = """
            with moved as (
                select p.place_id, p.doc_date, d.kind, p.amount_minor
                from posting p
                join document d on d.id = p.document_id
                join money_place m on m.id = p.place_id and m.kind = 'CHANNEL'
                where p.account = 'MONEY' and p.doc_date <= :last
            ),
            paid as (
                select place_id, sum(amount_minor) as amount_minor
                from buyer_money
                where doc_date between :first and :last
                group by place_id
            ),
            step as (
                select place_id, 1 as step, 'AT_START' as what, amount_minor from moved where doc_date < :first
                union all
                select place_id, 2, 'PAID_BY_BUYERS', amount_minor from paid
                union all
                select place_id, 3, 'FEES_KEPT_OF_SALES', amount_minor from moved
                where doc_date >= :first and kind in ('SALE', 'PAYMENT')
                union all
                select place_id, 3, 'FEES_KEPT_OF_SALES', -amount_minor from paid
                union all
                select place_id, 4, kind, amount_minor from moved where doc_date >= :first and kind not in ('SALE', 'PAYMENT')
                union all
                select place_id, 5, 'AT_END', -amount_minor from moved
            )
            select m.name, s.what, cast(sum(s.amount_minor) as bigint) as amount
            from step s
            join money_place m on m.id = s.place_id
            where m.kind = 'CHANNEL'
            group by m.name, m.id, s.step, s.what
            order by lower(m.name), m.id, s.step, s.what""";

    private final YearQueries queries;
    private final ReportedGross reported;

    MoneyTables(YearQueries queries, ReportedGross reported) {
        this.queries = queries;
        this.reported = reported;
    }

    FolderTable trips(int year) {
        return queries.table(
                TRIPS,
                year,
                DRIVEN,
                day("date"),
                text("document"),
                text("from"),
                text("to"),
                text("purpose"),
                number("miles"),
                new Column("rate_per_mile", Column.Type.RATE),
                amount("amount"),
                text("note"));
    }

    FolderTable salesTax(int year) {
        return queries.table(
                "sales-tax",
                year,
                TAXED,
                day("date"),
                text("document"),
                text("kind"),
                text("place"),
                yes("taxed"),
                amount("price"),
                amount("shipping"),
                amount("tax_due"),
                amount("passed_over_by_the_channel"));
    }

    FolderTable payouts(int year) {
        return queries.table(
                "payouts",
                year,
                PAID_OUT,
                day("date"),
                text("document"),
                text("from"),
                text("to"),
                amount("arrived"),
                amount("fee"),
                amount("covers"),
                amount("difference"),
                text("note"));
    }

    FolderTable balances(int year) {
        return queries.table(BALANCES, year, BALANCE, text("processor"), text("what"), amount("amount"));
    }

    /** The rows of each report add to zero: the way from the books to it, what is not explained, and it itself, negative. */
    FolderTable reportedGross(int year) {
        return new FolderTable(
                REPORTED,
                List.of(text("processor"), day("from"), day("to"), text("what"), amount("amount")),
                rows -> reported.of(year)
                        .forEach(step ->
                                rows.row(step.processor(), step.from(), step.to(), step.what(), step.amount())));
    }
}
