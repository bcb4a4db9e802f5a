package patinary.second;

import java.sql.SQLException;
import java.util.List;

/** What is read off books, the same question for either road. "books" stands for whose books they are. */
enum Figure {
    ACCOUNTS("select account, sum(amount), sum(quantity) from books group by account order by 1"),

    ACCOUNTS_AT_THE_END_OF_2025("""
            select account, sum(amount), sum(quantity) from books where on_day <= date '2025-12-31'
            group by account order by 1"""),

    ACCOUNTS_BY_DAY("""
            select on_day, account, sum(amount) from books group by on_day, account having sum(amount) <> 0
            order by 1, 2"""),

    EVERY_DOCUMENT("""
            select doc, account, place, piece, supply, sum(amount), sum(quantity) from books
            group by doc, account, place, piece, supply having sum(amount) <> 0 or sum(quantity) <> 0
            order by 1, 2, 3, 4, 5"""),

    PIECES_IN_STOCK("""
            select piece, sum(amount) from books where account = 'PIECES' group by piece having sum(amount) <> 0
            order by 1"""),

    PIECES_IN_STOCK_AT_THE_END_OF_2025("""
            select piece, sum(amount) from books where account = 'PIECES' and on_day <= date '2025-12-31'
            group by piece having sum(amount) <> 0 order by 1"""),

    COST_OF_EACH_PIECE_SOLD("""
            select piece, sum(amount) from books where account = 'COST_OF_PIECES' group by piece having sum(amount) <> 0
            order by 1"""),

    SUPPLIES("""
            select account, supply, sum(amount), sum(quantity) from books
            where account in ('BENCH', 'SHELF', 'COST_OF_RETAIL', 'WRITE_OFFS', 'FOUND_AT_COUNT', 'EXPENSE')
              and supply is not null
            group by account, supply order by 1, 2"""),

    CLOSING_STOCK_BY_YEAR("""
            select y.tax_year, b.account, sum(b.amount)
            from (values (2025), (2026)) y (tax_year)
            join books b on extract(year from b.on_day) <= y.tax_year
            where b.account in ('PIECES', 'BENCH', 'SHELF') group by y.tax_year, b.account order by 1, 2"""),

    YEARS("""
            select extract(year from on_day) as tax_year,
                   -sum(case when account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS') then amount else 0 end) as net_sales,
                   sum(case account when 'FEES' then amount else 0 end) as fees,
                   sum(case account when 'POSTAGE' then amount else 0 end) as postage,
                   sum(case account when 'COST_OF_PIECES' then amount else 0 end) as cost_of_pieces,
                   sum(case account when 'COST_OF_RETAIL' then amount else 0 end) as cost_of_retail,
                   sum(case account when 'WRITE_OFFS' then amount else 0 end) as write_offs,
                   sum(case account when 'FOUND_AT_COUNT' then amount else 0 end) as found_at_count,
                   sum(case account when 'OWN_USE' then amount else 0 end) as own_use,
                   sum(case account when 'VEHICLE' then amount else 0 end) as vehicle,
                   sum(case account when 'EXPENSE' then amount else 0 end) as expenses,
                   -sum(case account when 'OTHER_INCOME' then amount else 0 end) as other_income,
                   -sum(case when account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'FEES', 'POSTAGE', 'COST_OF_PIECES',
                                              'COST_OF_RETAIL') then amount else 0 end) as profit_of_selling
            from books group by extract(year from on_day) order by 1"""),

    SALES("""
            select sale,
                   -sum(case when account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS') then amount else 0 end) as net_sales,
                   sum(case account when 'FEES' then amount else 0 end) as fees,
                   sum(case account when 'POSTAGE' then amount else 0 end) as postage,
                   sum(case account when 'EXPENSE' then amount else 0 end) as packaging,
                   sum(case when account in ('COST_OF_PIECES', 'COST_OF_RETAIL') then amount else 0 end) as cost,
                   -sum(amount) as profit
            from (
                select s.sale, b.account, b.amount from books b join of_sale s on s.doc = b.doc
                where b.account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'FEES', 'POSTAGE', 'COST_OF_RETAIL')
                union all
                select coalesce(b.origin, b.doc), b.account, b.amount from books b
                where b.account = 'EXPENSE' and b.supply is not null
                union all
                select p.sale, b.account, b.amount from books b
                join piece_of_sale p on p.piece = b.piece and p.since <= b.ord and b.ord < p.before
                where b.account = 'COST_OF_PIECES'
            )
            group by sale order by sale"""),

    THINGS_SOLD("""
            select doc, account, piece, supply, sum(amount) from books
            where account in ('SALES', 'SHIPPING_CHARGED', 'FEES', 'REFUNDS')
            group by doc, account, piece, supply having sum(amount) <> 0 order by 1, 2, 3, 4"""),

    SALES_TAX_DUE("""
            select on_day, sum(amount) from books where account = 'SALES_TAX_DUE' group by on_day having sum(amount) <> 0
            order by 1"""),

    MONEY_PLACES("select place, sum(amount) from books where account = 'MONEY' group by place order by 1"),

    MONEY_PLACES_AT_THE_END_OF_2025("""
            select place, sum(amount) from books where account = 'MONEY' and on_day <= date '2025-12-31'
            group by place order by 1"""),

    CATEGORIES("""
            select extract(year from on_day), account, category, sum(amount) from books
            where account in ('EXPENSE', 'OTHER_INCOME', 'FEES', 'POSTAGE', 'OWNER_OUT', 'WRITE_OFFS')
            group by extract(year from on_day), account, category having sum(amount) <> 0 order by 1, 2, 3"""),

    VEHICLE("select doc, sum(amount) from books where account = 'VEHICLE' group by doc order by 1");

    private final String sql;

    Figure(String sql) {
        this.sql = sql;
    }

    List<List<Object>> own(SecondBooks books) throws SQLException {
        return books.rows(sql.replaceAll("\\bbooks\\b", "own_books"));
    }

    List<List<Object>> ofTheProgram(SecondBooks books) throws SQLException {
        return books.rows(sql.replaceAll("\\bbooks\\b", "program_books"));
    }
}
