package patinary.yearfolder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Adds the lines of a year up from nothing but the tables of its folder, in SQL of its own: from the journal and the mapping,
 * and the cost of goods from what was bought and what is there. It shares no line with the program.
 */
final class SecondRoad {

    private static final String BOOKED = """
            create table booked as
            select coalesce(own.meaning, whole.meaning, '') as meaning, j.account, sum(cast(j.amount as decimal(20, 2))) as amount
            from journal j
            left join mapping own on own.account = j.account and own.category = j.category and j.category <> ''
            left join mapping whole on whole.account = j.account and whole.category = ''
            where j.account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'OTHER_INCOME', 'EXPENSE', 'FEES', 'POSTAGE', 'ROUNDING',
                                'VEHICLE', 'COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS', 'FOUND_AT_COUNT')
            group by coalesce(own.meaning, whole.meaning, ''), j.account""";

    /** What tax counts otherwise is added to its account's meaning; a profit is a credit. */
    private static final String ADJUSTED = """
            create table posted as
            select meaning, account, amount from booked
            union all
            select coalesce(own.meaning, whole.meaning, ''), a.account, -sum(cast(a.profit_for_tax as decimal(20, 2)))
            from tax_adjustments a
            left join mapping own on own.account = a.account and own.category = a.category and a.category <> ''
            left join mapping whole on whole.account = a.account and whole.category = ''
            group by coalesce(own.meaning, whole.meaning, ''), a.account""";

    private static final String EXPECTED = """
            create table expected as
            with one as (
                select -coalesce(sum(case when meaning = 'gross_receipts' then amount end), 0) as receipts,
                       coalesce(sum(case when meaning = 'returns' then amount end), 0) as given_back,
                       coalesce(sum(case when meaning = 'cost_of_goods_sold' then amount end), 0) as cost,
                       -coalesce(sum(case when meaning = 'other_income' then amount end), 0) as other,
                       coalesce(sum(case when meaning = 'other_expenses' then amount end), 0) as other_expenses,
                       coalesce(sum(case when l.part = 'expenses' then amount end), 0) as spent,
                       coalesce(sum(case when l.part = 'expenses' and meaning = 'cost_of_goods_sold' then amount end), 0)
                           as cost_among_expenses
                from posted p
                left join (select meaning as m, min(part) as part from lines group by meaning) l on l.m = p.meaning
            ),
            otherwise as (
                select coalesce(sum(case when reason in ('BENCH', 'IN_PIECES')
                                         then cast(end_of_year_before as decimal(20, 2)) end), 0) as otherwise_before,
                       coalesce(sum(case when reason in ('BENCH', 'IN_PIECES')
                                         then cast(end_of_year as decimal(20, 2)) end), 0) as otherwise_after,
                       coalesce(sum(case when reason = 'OWNERS_SHARE' then cast(profit_for_tax as decimal(20, 2)) end), 0) as share,
                       coalesce(sum(case when reason = 'UNPAID_SUPPLIES' then cast(profit_for_tax as decimal(20, 2)) end), 0)
                           as unpaid
                from tax_adjustments
            ),
            goods as (
                select (select coalesce(sum(cast(cost as decimal(20, 2))), 0) from stock_at_start) + otherwise_before
                           + coalesce(sum(case when what = 'OPENING' then cast(amount as decimal(20, 2)) end), 0) as opening,
                       coalesce(sum(case when what = 'GOODS' then cast(amount as decimal(20, 2))
                                         when what = 'OWN_USE' then -cast(amount as decimal(20, 2)) end), 0) - share as bought,
                       coalesce(sum(case when what = 'MATERIALS' then cast(amount as decimal(20, 2))
                                         when what = 'PACKED' then -cast(amount as decimal(20, 2)) end), 0) - unpaid as materials,
                       (select coalesce(sum(cast(cost as decimal(20, 2))), 0) from stock) + otherwise_after as closing
                from otherwise left join purchases_and_cost on 1 = 1
                group by otherwise_before, otherwise_after, share, unpaid
            ),
            housed as (
                select tentative,
                       greatest(0, least(tentative, coalesce((
                           select sum(round(least(cast(square_feet as decimal(20, 2)), cast(most_square_feet as decimal(20, 2)))
                                            * cast(months as decimal(4)) * cast(rate_of_a_square_foot as decimal(20, 2)) / 12, 2))
                           from home_use), 0))) as home
                from (select receipts - given_back - cost + other - spent + cost_among_expenses as tentative from one) t
            )
            select 'gross_receipts' as meaning, receipts as amount from one
            union all select 'returns', given_back from one
            union all select 'net_receipts', receipts - given_back from one
            union all select 'cost_of_goods_sold', cost from one
            union all select 'gross_profit', receipts - given_back - cost from one
            union all select 'other_income', other from one
            union all select 'gross_income', receipts - given_back - cost + other from one
            union all select 'total_expenses', spent from one
            union all select 'tentative_profit', receipts - given_back - cost + other - spent + cost_among_expenses from one
            union all select 'business_use_of_home', home from housed
            union all select 'net_profit', tentative - home from housed
            union all select 'other_expenses_total', other_expenses from one
            union all select 'cogs_opening', opening from goods
            union all select 'cogs_purchases', bought from goods
            union all select 'cogs_materials', materials from goods
            union all select 'cogs_available', opening + bought + materials from goods
            union all select 'cogs_closing', closing from goods
            union all select 'cogs_total', opening + bought + materials - closing from goods
            union all select meaning, sum(amount) from posted
            where meaning not in ('', 'gross_receipts', 'returns', 'cost_of_goods_sold', 'other_income')
            group by meaning""";

    /** Each query gives what does not agree; a row of it is told. */
    private static final List<String> DISAGREE =
            List.of("""
            select 'line ' || l.meaning, l.amount, e.amount
            from lines l left join expected e on e.meaning = l.meaning
            where l.amount <> '' and (e.amount is null or cast(l.amount as decimal(20, 2)) <> e.amount)""", """
            select 'expected ' || e.meaning, cast(e.amount as varchar), l.amount
            from expected e join lines l on l.meaning = e.meaning
            where l.amount = '' and e.amount <> 0""", """
            select 'miles', l.number, (select coalesce(sum(cast(miles as decimal(20, 1))), 0) from trips)
            from lines l
            where l.meaning = 'miles_business'
              and cast(l.number as decimal(20, 1)) <> (select coalesce(sum(cast(miles as decimal(20, 1))), 0) from trips)""", """
            select 'document ' || document, cast(sum(cast(amount as decimal(20, 2))) as varchar), '0'
            from journal group by document having sum(cast(amount as decimal(20, 2))) <> 0""", """
            select 'file ' || account, cast(sum(filed) as varchar), cast(sum(posted) as varchar)
            from (select account, -cast(amount as decimal(20, 2)) as filed, 0 as posted from income
                  union all select account, cast(amount as decimal(20, 2)), 0 from expenses
                  union all select account, cast(amount as decimal(20, 2)), 0 from purchases_and_cost where what = 'COST'
                  union all select account, 0, amount from booked)
            group by account having sum(filed) <> sum(posted)""", """
            select 'cost by piece ' || account, cast(sum(filed) as varchar), cast(sum(posted) as varchar)
            from (select account, cast(cost as decimal(20, 2)) as filed, 0 as posted from cost_of_goods_by_piece
                  union all select account, 0, amount from booked
                  where account in ('COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS', 'FOUND_AT_COUNT'))
            group by account having sum(filed) <> sum(posted)""", """
            select 'landed ' || piece_code, cost, '' from cost_of_goods_by_piece
            where bought <> '' and cast(bought as decimal(20, 2)) + cast(supplies as decimal(20, 2)) + cast(other as decimal(20, 2))
                + cast(in_other_years_or_in_stock as decimal(20, 2)) <> cast(cost as decimal(20, 2))""", """
            select 'cost of goods', cast(a.amount as varchar), cast(b.amount as varchar)
            from expected a join expected b on b.meaning = 'cogs_total'
            where a.meaning = 'cost_of_goods_sold' and a.amount <> b.amount""", """
            select 'arose ' || account || ' ' || piece_code || ' ' || title, cast(sum(arose) as varchar), cast(sum(there) as varchar)
            from (select account, piece_code, title, cast(cost as decimal(20, 2)) as arose, 0 as there from stock_how_it_arose
                  union all select account, piece_code, title, 0, cast(cost as decimal(20, 2)) from stock)
            group by account, piece_code, title having sum(arose) <> sum(there)""", """
            select 'vehicle', cast(sum(cast(amount as decimal(20, 2))) as varchar), '' from trips
            having coalesce(sum(cast(amount as decimal(20, 2))), 0)
                <> (select coalesce(sum(amount), 0) from booked where account = 'VEHICLE')""", """
            select 'processor ' || processor, cast(sum(cast(amount as decimal(20, 2))) as varchar), '0'
            from processor_balances group by processor having sum(cast(amount as decimal(20, 2))) <> 0""", """
            select 'report ' || processor || ' ' || "FROM", cast(sum(cast(amount as decimal(20, 2))) as varchar), '0'
            from reported_gross group by processor, "FROM", "TO" having sum(cast(amount as decimal(20, 2))) <> 0""", """
            select 'on no line ' || account || ' ' || category, amount, ''
            from on_no_line where account || '|' || category not in (
                select p.account || '|' || p.category from (select account, category from journal) p)""");

    private SecondRoad() {}

    /** An empty cell is read as null, which equals nothing. */
    private static void emptyIsEmpty(Statement sql, String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (ResultSet none = sql.executeQuery("select * from " + table + " where 1 = 0")) {
            for (int i = 1; i <= none.getMetaData().getColumnCount(); i++) {
                columns.add('"' + none.getMetaData().getColumnName(i) + '"');
            }
        }
        for (String column : columns) {
            sql.execute("update " + table + " set " + column + " = '' where " + column + " is null");
        }
    }

    /** What does not agree; nothing where every line is the same to the cent. */
    static List<String> disagreements(Path folder) throws SQLException, IOException {
        try (Connection memory = DriverManager.getConnection("jdbc:h2:mem:");
                Statement sql = memory.createStatement()) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file :
                        files.filter(one -> one.toString().endsWith(".csv")).toList()) {
                    String table =
                            file.getFileName().toString().replace(".csv", "").replace('-', '_');
                    sql.execute("create table " + table + " as select * from csvread('" + file
                            + "', null, 'charset=UTF-8')");
                    emptyIsEmpty(sql, table);
                }
            }
            sql.execute(BOOKED);
            sql.execute(ADJUSTED);
            sql.execute(EXPECTED);
            List<String> found = new ArrayList<>();
            for (String query : DISAGREE) {
                try (ResultSet rows = sql.executeQuery(query)) {
                    while (rows.next()) {
                        found.add(rows.getString(1) + ": " + rows.getString(2) + " and " + rows.getString(3));
                    }
                }
            }
            return found;
        }
    }
}
