package patinary.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.durable.ManyRows;

/** What is stored of supplies carried forward: the one place that writes it. */
@Repository
class CarriedStore {

    private static final List<String> COLUMNS = List.of("supply_id", "begin_date", "whole", "places");

    /** A tenth of what the column holds; uses on a hundred pieces at once come to it. */
    private static final int LONGEST = 100_000;

    private final JdbcTemplate jdbc;
    private final ManyRows many;
    private final Carried.Rule rule;

    CarriedStore(
            JdbcTemplate jdbc,
            ManyRows many,
            @Value("${patinary.books.carried-every:50}") int every,
            @Value("${patinary.books.carried-uses:20}") int uses) {
        this.jdbc = jdbc;
        this.many = many;
        this.rule = new Carried.Rule(every, uses);
    }

    Carried.Rule rule() {
        return rule;
    }

    /** All that is carried forward of a supply, in the order of days. */
    List<Carried> of(UUID supply) {
        return jdbc.query(
                "select * from carried_forward where supply_id = ? order by begin_date",
                (row, number) -> read(row),
                supply);
    }

    /** The supplies of which something is carried forward. */
    List<UUID> supplies() {
        return jdbc.queryForList("select distinct supply_id from carried_forward order by supply_id", UUID.class);
    }

    /** What was last carried forward of each of these supplies to a day or before. */
    List<Carried> latest(Collection<UUID> supplies, LocalDate day) {
        return latest(supplies, day, "");
    }

    /** The same of those that are whole. */
    List<Carried> latestWhole(Collection<UUID> supplies, LocalDate day) {
        return latest(supplies, day, "and whole");
    }

    private List<Carried> latest(Collection<UUID> supplies, LocalDate day, String and) {
        return Batches.asked(
                supplies,
                ids -> jdbc.query(
                        """
                select c.*
                from (select supply_id, max(begin_date) as begin_date
                      from carried_forward
                      where supply_id in (%s) and begin_date <= ? %s
                      group by supply_id) l
                join carried_forward c on c.supply_id = l.supply_id and c.begin_date = l.begin_date
                """.formatted(Batches.marks(ids), and), (row, number) -> read(row), values(ids, day)));
    }

    private static Object[] values(List<UUID> ids, LocalDate day) {
        return Stream.concat(ids.stream(), Stream.of(day)).toArray();
    }

    /** Forgets what was carried forward of supplies to days after one, and keeps this as well, but for what is as long as the moves it spares. */
    void replace(Collection<UUID> supplies, LocalDate day, Collection<Carried> carried) {
        jdbc.batchUpdate(
                "delete from carried_forward where supply_id = ? and begin_date > ?",
                supplies.stream().map(id -> new Object[] {id, day}).toList());
        ManyRows.Filling rows = many.into("carried_forward", COLUMNS);
        carried.forEach(one -> {
            String places = CarriedText.of(one.places());
            if (places.length() <= LONGEST) {
                rows.add(one.supply(), one.day(), one.isWhole(), places);
            }
        });
        rows.end();
    }

    void forgetAll() {
        jdbc.update("delete from carried_forward");
    }

    private static Carried read(ResultSet row) throws SQLException {
        return new Carried(
                row.getObject("supply_id", UUID.class),
                row.getDate("begin_date").toLocalDate(),
                CarriedText.read(row.getString("places")));
    }
}
