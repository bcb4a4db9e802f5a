package patinary.taxbasis;

import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.Amount;

/** How each year is counted, and what that does to it. */
@Service
@Transactional(readOnly = true)
public class BasisBook {

    private final TaxBases bases;
    private final Differences differences;
    private final TaxYears years;
    private final Books books;
    private final JdbcClient jdbc;

    BasisBook(TaxBases bases, Differences differences, TaxYears years, Books books, JdbcClient jdbc) {
        this.bases = bases;
        this.differences = differences;
        this.years = years;
        this.books = books;
        this.jdbc = jdbc;
    }

    /** How a year is counted. */
    public TaxBasis basis(int year) {
        return bases.all().of(year);
    }

    /** The adjustments from books to tax of a year; none where it is counted as the books have it, and the one before was. */
    public Adjustments year(int year) {
        return adjustments(year, bases.all());
    }

    /** What a year would be if it were counted so. */
    Adjustments tried(int year, TaxBasis basis) {
        return adjustments(year, bases.all().with(year, basis));
    }

    /** Whether something was set for this very year. */
    Optional<TaxBases.Kept> set(int year) {
        return bases.of(year);
    }

    /** What would hold if nothing were set for this very year. */
    TaxBasis inherited(int year) {
        return bases.all().without(year).of(year);
    }

    private Adjustments adjustments(int year, BasisByYear all) {
        TaxBasis was = all.before(year, years.firstOfBooks());
        TaxBasis is = all.of(year);
        if (was.equals(TaxBasis.AS_BOOKS) && is.equals(TaxBasis.AS_BOOKS)) {
            return new Adjustments(was, is, List.of());
        }
        return Adjustments.of(differences.atEndOf(year - 1), differences.atEndOf(year), was, is);
    }

    /** The year's profit by the books: what all accounts of profit and loss come to. */
    public Amount bookProfit(int year) {
        return Amount.of(jdbc.sql("select cast(coalesce(-sum(amount_minor), 0) as bigint) from year_row "
                        + "where doc_date between ? and ? and part in ('INCOME', 'EXPENSE', 'COST')")
                .params(years.first(year), years.last(year))
                .query(Long.class)
                .single());
    }

    /** Whether the year, or a later one, is sealed: then how it is counted stays. */
    public boolean sealed(int year) {
        return jdbc.sql("select count(*) from year_seal where tax_year >= ?")
                        .param(year)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    /**
     * Counts a year, and those after it that nothing was set for, in another way.
     *
     * @return whether it could be: a sealed year stays as it is
     */
    @Transactional
    boolean set(int year, TaxBasis basis, String note) {
        books.settingsChange();
        if (sealed(year)) {
            return false;
        }
        bases.keep(year, basis, note);
        return true;
    }

    /** Takes back what was set for a year, so that it is counted as the one before. */
    @Transactional
    boolean unset(int year) {
        books.settingsChange();
        if (sealed(year)) {
            return false;
        }
        bases.drop(year);
        return true;
    }
}
