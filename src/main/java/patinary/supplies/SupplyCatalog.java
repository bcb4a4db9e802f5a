package patinary.supplies;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.measure.NamedMeasure;
import patinary.web.Choice;

/** The supplies with what is known of them, for the forms that name one. */
@Service
@Transactional(readOnly = true)
public class SupplyCatalog {

    /** A supply, its facts and its line, and how her measures of it changed. */
    public record Known(UUID id, Supply.Facts facts, SupplyLine line, long version, List<MeasureChange> changes) {

        /** The names under which quantities of it were known on a day. */
        public List<NamedMeasure> measuresOn(LocalDate day) {
            return SupplyMeasures.on(facts, changes, day);
        }

        /** Line and name, since two lines may each have a white. */
        public String title() {
            return line.name() + ": " + facts.name();
        }

        public Choice choice() {
            return Choice.named(id.toString(), title());
        }
    }

    private record Title(UUID id, String title) {}

    private final JdbcClient jdbc;
    private final Supplies supplies;
    private final PotsPutAside pots;

    SupplyCatalog(JdbcClient jdbc, Supplies supplies, PotsPutAside pots) {
        this.jdbc = jdbc;
        this.supplies = supplies;
        this.pots = pots;
    }

    /** All supplies, by line and name. */
    public List<Known> all() {
        return withLines(supplies.findAllWithLines()).entrySet().stream()
                .map(one -> known(one.getKey(), one.getValue()))
                .sorted(Comparator.comparing(Known::title, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** All supplies to choose from, by line and name, where nothing else of them is needed. */
    public List<Choice> choices() {
        return choices("");
    }

    private List<Choice> choices(String which) {
        return jdbc
                .sql("select s.id, l.name || ': ' || s.name as title from supply s"
                        + " join supply_line l on l.id = s.supply_line_id" + which)
                .query(Title.class)
                .stream()
                .map(title -> Choice.named(title.id().toString(), title.title()))
                .sorted(Comparator.comparing(Choice::text, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** Those that can be bought, which a pot that was mixed and put aside cannot. */
    public List<Known> toBuy() {
        Set<UUID> kept = pots.ids();
        return all().stream().filter(supply -> !kept.contains(supply.id())).toList();
    }

    /** The names alone. */
    public Map<UUID, String> names() {
        Map<UUID, String> names = new HashMap<>();
        jdbc.sql("select id, name from supply")
                .query((row, number) -> names.put(row.getObject("id", UUID.class), row.getString("name")))
                .list();
        return names;
    }

    /** Those that can be bought, to choose from. */
    public List<Choice> choicesToBuy() {
        return choices(" where not exists (select 1 from bench_pot p where p.kept_as = s.id)");
    }

    public Optional<Known> find(UUID id) {
        return withLines(supplies.findWithLine(id)).entrySet().stream()
                .map(one -> known(one.getKey(), one.getValue()))
                .findFirst();
    }

    private static Map<Supply, SupplyLine> withLines(List<Object[]> rows) {
        Map<Supply, SupplyLine> lines = new LinkedHashMap<>();
        rows.forEach(row -> lines.put((Supply) row[0], (SupplyLine) row[1]));
        return lines;
    }

    private static Known known(Supply supply, SupplyLine line) {
        return new Known(supply.id(), supply.facts(), line, supply.version(), supply.changes());
    }
}
