package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;

/** Reads what her hours earned; by whole months. */
@Repository
@Transactional(readOnly = true)
class HourReport {

    private static final String PROFITS = """
            select doc_date, cast(sum(profit_minor) as bigint) as profit_minor
            from document_profit
            where doc_date between :first and :last
            group by doc_date""";

    private static final String MINUTES = """
            select d.doc_date, sum(be.minutes) as minutes
            from bench_entry be
            join document d on d.id = be.id
            where d.doc_date between :first and :last
            group by d.doc_date""";

    private record Asking(Period period) {}

    private final JdbcClient jdbc;
    private final MoneyReport money;
    private final CurrentAims aims;
    private final CurrentShop shop;
    private final Readings readings;

    HourReport(JdbcClient jdbc, MoneyReport money, CurrentAims aims, CurrentShop shop, Readings readings) {
        this.jdbc = jdbc;
        this.money = money;
        this.aims = aims;
        this.shop = shop;
        this.readings = readings;
    }

    /** @param asked brought to whole months */
    HourTable table(Period asked) {
        Period period = new Period(
                asked.first().withDayOfMonth(1), YearMonth.from(asked.last()).atEndOfMonth());
        return readings.ahead(new Asking(period), () -> reckoned(period));
    }

    private HourTable reckoned(Period period) {
        Map<YearMonth, Amount> profits = new HashMap<>();
        jdbc.sql(PROFITS)
                .param("first", period.first())
                .param("last", period.last())
                .query(row -> {
                    profits.merge(
                            YearMonth.from(row.getObject(1, LocalDate.class)), Amount.of(row.getLong(2)), Amount::plus);
                });
        Map<YearMonth, BigDecimal> minutes = new HashMap<>();
        jdbc.sql(MINUTES)
                .param("first", period.first())
                .param("last", period.last())
                .query(row -> {
                    minutes.merge(
                            YearMonth.from(row.getObject(1, LocalDate.class)), row.getBigDecimal(2), BigDecimal::add);
                });
        HourTable.Facts facts = new HourTable.Facts(profits, minutes, money.sold(period.first(), period.last()));
        return HourTable.of(facts, period, aims.get(), shop.hourlyRate());
    }
}
