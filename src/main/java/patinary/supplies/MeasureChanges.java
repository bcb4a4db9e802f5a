package patinary.supplies;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Corrects her own measures from a day on, and takes a correction back. What was entered before stays as it was. */
@Service
@Transactional
public class MeasureChanges {

    private final Supplies supplies;
    private final JdbcClient jdbc;

    MeasureChanges(Supplies supplies, JdbcClient jdbc) {
        this.supplies = supplies;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public List<MeasureChange> of(UUID supply) {
        return jdbc.sql("""
                        select name, from_day, was_quantity as was, now_quantity as now
                        from supply_measure_change where supply_id = ? order by from_day, name""").param(supply).query(MeasureChange.class).list();
    }

    /**
     * From a day on the measure is this size. A second correction on one day replaces the first.
     *
     * @return whether there is such a measure
     */
    public boolean correct(UUID supply, String name, BigDecimal size, LocalDate from) {
        Supply stored = supplies.findById(supply).orElseThrow();
        BigDecimal was = sizes(stored).get(name);
        if (was == null) {
            return false;
        }
        int again = jdbc.sql("""
                        update supply_measure_change set now_quantity = :now
                        where supply_id = :supply and name = :name and from_day = :day""")
                .params(Map.of("now", size, "supply", supply, "name", name, "day", from))
                .update();
        if (again == 0) {
            jdbc.sql("insert into supply_measure_change values (?, ?, ?, ?, ?)")
                    .params(supply, name, from, was, size)
                    .update();
        }
        resize(stored, name, size);
        return true;
    }

    /**
     * Takes the latest correction of a measure back.
     *
     * @return whether it was the latest and nobody has changed the measure since
     */
    public boolean undo(UUID supply, String name, LocalDate from) {
        Supply stored = supplies.findById(supply).orElseThrow();
        List<MeasureChange> changes =
                of(supply).stream().filter(change -> change.name().equals(name)).toList();
        BigDecimal size = sizes(stored).get(name);
        MeasureChange latest = changes.isEmpty() ? null : changes.get(changes.size() - 1);
        if (latest == null
                || size == null
                || !latest.fromDay().equals(from)
                || latest.now().compareTo(size) != 0) {
            return false;
        }
        jdbc.sql("delete from supply_measure_change where supply_id = ? and name = ? and from_day = ?")
                .params(supply, name, from)
                .update();
        resize(stored, name, latest.was());
        return true;
    }

    private static Map<String, BigDecimal> sizes(Supply supply) {
        return supply.facts().measures().stream().collect(Collectors.toMap(Supply.Named::name, Supply.Named::quantity));
    }

    private static void resize(Supply supply, String name, BigDecimal size) {
        Supply.Facts facts = supply.facts();
        List<Supply.Named> measures = facts.measures().stream()
                .map(measure -> measure.name().equals(name) ? new Supply.Named(name, size) : measure)
                .toList();
        supply.rewrite(facts.withMeasures(measures));
    }
}
