package patinary.yearfolder;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxbasis.TaxYears;

/** Makes tables of queries, read a few rows at a time: inside a transaction neither side holds them all. */
@Component
class YearQueries {

    /** What rests on estimates. */
    record Estimates(Amount cost, Amount stock) {

        boolean none() {
            return cost.isZero() && stock.isZero();
        }
    }

    private static final int FETCHED_AT_ONCE = 2_000;

    private final NamedParameterJdbcTemplate jdbc;
    private final CurrentShop shop;
    private final TaxYears years;

    YearQueries(DataSource store, CurrentShop shop, TaxYears years) {
        JdbcTemplate template = new JdbcTemplate(store);
        template.setFetchSize(FETCHED_AT_ONCE);
        this.jdbc = new NamedParameterJdbcTemplate(template);
        this.shop = shop;
        this.years = years;
    }

    /**
     * A table whose columns are those of a query, in its order. The query may name {@code :first} and {@code :last}, the
     * year's days, and {@code :before}, the day before it.
     */
    FolderTable table(String name, int year, String sql, Column... columns) {
        List<Column> all = List.of(columns);
        return new FolderTable(name, all, rows -> read(year, sql, all, rows));
    }

    /** Business miles of the year. */
    BigDecimal miles(int year) {
        BigDecimal miles = jdbc.queryForObject(
                "select coalesce(sum(t.miles), 0) from trip t join document d on d.id = t.id"
                        + " where d.doc_date between :first and :last",
                days(year),
                BigDecimal.class);
        return Objects.requireNonNull(miles);
    }

    /** Cost of goods, and cost in pieces at the end, that rest on a remembered price or an estimated quantity, in minor units. */
    Estimates estimates(int year) {
        return Objects.requireNonNull(jdbc.queryForObject(
                "select coalesce(sum(case when part = 'COST' and doc_date >= :first then amount_minor else 0 end), 0),"
                        + " coalesce(sum(case when account = 'PIECES' then amount_minor else 0 end), 0)"
                        + " from year_row where estimated and doc_date <= :last",
                days(year),
                (row, at) -> new Estimates(Amount.of(row.getLong(1)), Amount.of(row.getLong(2)))));
    }

    private void read(int year, String sql, List<Column> columns, FolderTable.Rows rows) {
        int digits = shop.currency().digits();
        jdbc.query(sql, days(year), (RowCallbackHandler) result -> {
            @Nullable Object[] cells = new Object[columns.size()];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = columns.get(i).read(result, i + 1, digits);
            }
            rows.row(cells);
        });
    }

    LocalDate first(int year) {
        return years.first(year);
    }

    LocalDate last(int year) {
        return years.last(year);
    }

    private Map<String, Object> days(int year) {
        LocalDate first = first(year);
        return Map.of("first", first, "last", last(year), "before", first.minusDays(1));
    }
}
