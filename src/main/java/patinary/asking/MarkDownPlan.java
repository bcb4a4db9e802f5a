package patinary.asking;

import java.math.BigDecimal;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.Percent;

/** Her plan of mark-downs, read and kept as a whole. */
@Repository
@Transactional
class MarkDownPlan {

    private record Row(int afterDays, BigDecimal percent) {}

    private final JdbcClient jdbc;
    private final Books books;

    MarkDownPlan(JdbcClient jdbc, Books books) {
        this.jdbc = jdbc;
        this.books = books;
    }

    @Transactional(readOnly = true)
    public List<MarkDown.Step> steps() {
        return jdbc
                .sql("select after_days, percent from mark_down_step order by after_days")
                .query(Row.class)
                .list()
                .stream()
                .map(row -> new MarkDown.Step(row.afterDays(), new Percent(row.percent())))
                .toList();
    }

    public void keep(List<MarkDown.Step> steps) {
        books.settingsChange();
        jdbc.sql("delete from mark_down_step").update();
        steps.forEach(step -> jdbc.sql("insert into mark_down_step (after_days, percent) values (?, ?)")
                .params(step.afterDays(), step.percent().value())
                .update());
    }
}
