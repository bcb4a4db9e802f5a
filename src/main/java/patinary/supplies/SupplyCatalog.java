package patinary.supplies;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
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

    private final Supplies supplies;
    private final SupplyLines lines;
    private final MeasureChanges changes;
    private final PotsPutAside pots;

    SupplyCatalog(Supplies supplies, SupplyLines lines, MeasureChanges changes, PotsPutAside pots) {
        this.supplies = supplies;
        this.lines = lines;
        this.changes = changes;
        this.pots = pots;
    }

    /** All supplies, by line and name. */
    public List<Known> all() {
        Map<UUID, SupplyLine> byId =
                lines.findAllByOrderByName().stream().collect(Collectors.toMap(SupplyLine::id, Function.identity()));
        Map<UUID, List<MeasureChange>> changed = changes.all();
        return supplies.findAllByOrderByName().stream()
                .map(supply -> known(
                        supply,
                        Objects.requireNonNull(byId.get(supply.facts().lineId())),
                        changed.getOrDefault(supply.id(), List.of())))
                .sorted(Comparator.comparing(Known::title, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** Those that can be bought, which a pot that was mixed and put aside cannot. */
    public List<Known> toBuy() {
        Set<UUID> kept = pots.ids();
        return all().stream().filter(supply -> !kept.contains(supply.id())).toList();
    }

    public Optional<Known> find(UUID id) {
        return supplies.findById(id)
                .map(supply ->
                        known(supply, lines.findById(supply.facts().lineId()).orElseThrow(), changes.of(id)));
    }

    private static Known known(Supply supply, SupplyLine line, List<MeasureChange> changes) {
        return new Known(supply.id(), supply.facts(), line, supply.version(), changes);
    }
}
