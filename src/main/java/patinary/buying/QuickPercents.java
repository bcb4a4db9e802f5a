package patinary.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Percent;

/** Her own buttons for what is taken off a thing at the shelf, in the order she wants to find them. */
@Service
@Transactional
class QuickPercents {

    /** More would not be found faster than typing. */
    static final int MOST = 12;

    /**
     * One button.
     *
     * @param name what it means, in her words
     */
    record Row(UUID id, String name, BigDecimal percent) {

        /** The number as a form sends it. */
        public String value() {
            return percent.stripTrailingZeros().toPlainString();
        }

        public Percent share() {
            return new Percent(percent);
        }
    }

    private final JdbcClient jdbc;

    QuickPercents(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public List<Row> rows() {
        return jdbc.sql("select id, name, percent from quick_percent order by line, id")
                .query(Row.class)
                .list();
    }

    public void add(String name, Percent percent) {
        jdbc.sql("insert into quick_percent (id, line, name, percent) values (?, ?, ?, ?)")
                .params(UUID.randomUUID(), rows().size() + 1, name, percent.value())
                .update();
    }

    /** Changes places with the one before (-1) or after it (1), where there is one. */
    public void move(UUID id, int by) {
        List<UUID> order = new ArrayList<>(rows().stream().map(Row::id).toList());
        int from = order.indexOf(id);
        int to = from + by;
        if (from >= 0 && to >= 0 && to < order.size()) {
            Collections.swap(order, from, to);
            number(order);
        }
    }

    public void remove(UUID id) {
        jdbc.sql("delete from quick_percent where id = ?").param(id).update();
        number(rows().stream().map(Row::id).toList());
    }

    private void number(List<UUID> order) {
        IntStream.range(0, order.size())
                .forEach(i -> jdbc.sql("update quick_percent set line = ? where id = ?")
                        .params(i + 1, order.get(i))
                        .update());
    }
}
