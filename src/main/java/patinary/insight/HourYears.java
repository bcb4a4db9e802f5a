package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxbasis.BasisBook;
import patinary.taxbasis.TaxYears;

/** Reads, for a whole tax year, the profit as it is counted for tax beside what is left after her hours. */
@Repository
@Transactional(readOnly = true)
class HourYears {

    private static final String PROFIT =
            "select cast(coalesce(sum(profit_minor), 0) as bigint) from document_profit where doc_date between ? and ?";

    private static final String MINUTES = """
            select coalesce(sum(be.minutes), 0)
            from bench_entry be
            join document d on d.id = be.id
            where d.doc_date between ? and ?""";

    /**
     * One tax year.
     *
     * @param books profit by the books, of the whole shop
     * @param adjustment by how much the profit as the year is counted for tax lies above it
     * @param minutes worked at the bench
     * @param truly the profit by the books less those minutes at her rate
     */
    record Year(
            int year,
            LocalDate first,
            LocalDate last,
            Amount books,
            Amount adjustment,
            BigDecimal minutes,
            Amount truly) {

        /** Whether days of it are still to come. */
        boolean runs(LocalDate today) {
            return last.isAfter(today);
        }

        /** As the year is counted for tax, before the use of a home. */
        public Amount taxed() {
            return books.plus(adjustment);
        }

        public long wholeMinutes() {
            return Ratios.wholeMinutes(minutes);
        }
    }

    private record Asking(int year) {}

    private final JdbcClient jdbc;
    private final TaxYears years;
    private final BasisBook bases;
    private final CurrentShop shop;
    private final Readings readings;

    HourYears(JdbcClient jdbc, TaxYears years, BasisBook bases, CurrentShop shop, Readings readings) {
        this.jdbc = jdbc;
        this.years = years;
        this.bases = bases;
        this.shop = shop;
        this.readings = readings;
    }

    /** The years of the books, the running one first. */
    List<Integer> years() {
        int running = years.of(shop.today());
        return IntStream.iterate(running, year -> year - 1)
                .limit(Math.max(1, running - years.firstOfBooks() + 1L))
                .boxed()
                .toList();
    }

    /** What is counted otherwise than the books is read for both ends of the year, so one year is read at a time. */
    Year of(int year) {
        return readings.ahead(new Asking(year), () -> year(year));
    }

    private Year year(int year) {
        LocalDate first = years.first(year);
        LocalDate last = years.last(year);
        Amount books =
                Amount.of(jdbc.sql(PROFIT).params(first, last).query(Long.class).single());
        BigDecimal minutes =
                jdbc.sql(MINUTES).params(first, last).query(BigDecimal.class).single();
        Amount work = Ratios.worth(minutes, shop.hourlyRate());
        return new Year(year, first, last, books, bases.year(year).profit(), minutes, books.minus(work));
    }
}
