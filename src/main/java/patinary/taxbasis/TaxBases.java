package patinary.taxbasis;

import java.util.Optional;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.taxbasis.TaxBasis.Income;
import patinary.taxbasis.TaxBasis.Supplies;

/** Keeps how each year is counted. */
@Repository
class TaxBases {

    /** A stored row. */
    record Kept(int taxYear, Income income, Supplies supplies, String note) {
        TaxBasis basis() {
            return new TaxBasis(income, supplies);
        }
    }

    private final JdbcClient jdbc;

    TaxBases(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All that was ever set, by year. */
    BasisByYear all() {
        TreeMap<Integer, TaxBasis> byYear = new TreeMap<>();
        jdbc.sql("select tax_year, income, supplies, note from tax_basis")
                .query(Kept.class)
                .list()
                .forEach(row -> byYear.put(row.taxYear(), row.basis()));
        return new BasisByYear(byYear);
    }

    Optional<Kept> of(int year) {
        return jdbc.sql("select tax_year, income, supplies, note from tax_basis where tax_year = ?")
                .param(year)
                .query(Kept.class)
                .optional();
    }

    void keep(int year, TaxBasis basis, String note) {
        drop(year);
        jdbc.sql("insert into tax_basis (tax_year, income, supplies, note) values (?, ?, ?, ?)")
                .params(year, basis.income().name(), basis.supplies().name(), note)
                .update();
    }

    void drop(int year) {
        jdbc.sql("delete from tax_basis where tax_year = ?").param(year).update();
    }
}
