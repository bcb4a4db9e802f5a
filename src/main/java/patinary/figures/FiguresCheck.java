package patinary.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.AlsoChecked;
import patinary.ledger.Batches;
import patinary.ledger.Finding;

/**
 * Works all kept figures out anew and compares them row by row with what is kept. It needs the tables of the touched ids for
 * that, so it may write; it leaves them empty.
 */
@Service
class FiguresCheck implements AlsoChecked {

    private static final int BATCH = 2_000;
    private static final String NOTHING = "-";

    private final TouchedIds touched;
    private final JdbcTemplate jdbc;

    FiguresCheck(TouchedIds touched, JdbcTemplate jdbc) {
        this.touched = touched;
        this.jdbc = jdbc;
    }

    @Override
    @Transactional(propagation = Propagation.REQUIRES_NEW, isolation = Isolation.REPEATABLE_READ)
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (KeptFigure figure : KeptFigure.values()) {
            compare(figure, findings);
        }
        return findings;
    }

    private void compare(KeptFigure figure, List<Finding> findings) {
        Touched by = figure.by();
        String kept = "select k.* from " + by.table() + " t join " + figure.table() + " k on k." + by.key() + " = t."
                + by.key();
        for (List<UUID> ids : Batches.of(jdbc.queryForList(by.all(), UUID.class), BATCH)) {
            touched.set(by, ids);
            // How often each row is there beside how often it should be: a row kept twice would be read twice.
            Map<String, Integer> surplus = new TreeMap<>();
            rows(kept).forEach(row -> surplus.merge(row, 1, Integer::sum));
            rows("select * from " + figure.definition()).forEach(row -> surplus.merge(row, -1, Integer::sum));
            touched.clear(by);
            surplus.forEach((row, times) -> tell(figure, row, times, findings));
        }
        rows("select * from " + figure.table() + " where " + by.key() + " not in (" + by.all() + ")")
                .forEach(row -> findings.add(finding(figure, NOTHING, row)));
    }

    private static void tell(KeptFigure figure, String row, int times, List<Finding> findings) {
        if (times > 0) {
            findings.add(finding(figure, NOTHING, row));
        } else if (times < 0) {
            findings.add(finding(figure, row, NOTHING));
        }
    }

    private List<String> rows(String query) {
        RowMapper<String> text = (row, number) -> {
            Stream.Builder<String> values = Stream.builder();
            for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                values.add(String.valueOf(row.getString(i)));
            }
            return values.build().collect(Collectors.joining(" "));
        };
        return jdbc.query(query, text);
    }

    private static Finding finding(KeptFigure figure, String expected, String found) {
        return new Finding(Finding.What.KEPT_FIGURE, null, figure.table(), expected, found);
    }
}
