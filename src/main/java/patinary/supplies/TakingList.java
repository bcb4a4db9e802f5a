package patinary.supplies;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.measure.Dimension;

/** What was taken from the retail shelf for her own use in a year, at cost. */
@Repository
class TakingList {

    /**
     * One taking.
     *
     * @param ownUseTax whether it is marked that tax on own use may be owed
     * @param atOnce whether it was a tool whose price became an expense
     * @param costMinor what it cost, as far as that is known
     */
    record Row(
            UUID takingId,
            LocalDate docDate,
            String supply,
            String supplyLine,
            Dimension dimension,
            BigDecimal quantity,
            boolean ownUseTax,
            boolean atOnce,
            String note,
            long costMinor) {}

    /** A year's takings; the sums are of their cost. */
    record Year(List<Row> rows) {

        public long allMinor() {
            return rows.stream().mapToLong(Row::costMinor).sum();
        }

        public long markedMinor() {
            return rows.stream()
                    .filter(Row::ownUseTax)
                    .mapToLong(Row::costMinor)
                    .sum();
        }
    }

    private final JdbcClient jdbc;

    TakingList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Year of(int year) {
        return new Year(jdbc.sql("""
                        select taking_id, doc_date, supply, supply_line, dimension, quantity, own_use_tax, at_once, note,
                               cost_minor
                        from taking_cost
                        where doc_date between ? and ?
                        order by doc_date, cast(taking_id as varchar(36))
                        """)
                .params(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31))
                .query(Row.class)
                .list());
    }
}
