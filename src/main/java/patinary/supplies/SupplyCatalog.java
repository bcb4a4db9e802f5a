package patinary.supplies;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Choice;

/** The supplies with what is known of them, for the forms that name one. */
@Service
@Transactional(readOnly = true)
public class SupplyCatalog {

    /** A supply, its facts and its line. */
    public record Known(UUID id, Supply.Facts facts, SupplyLine line, long version) {

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

    SupplyCatalog(Supplies supplies, SupplyLines lines) {
        this.supplies = supplies;
        this.lines = lines;
    }

    /** All supplies, by line and name. */
    public List<Known> all() {
        Map<UUID, SupplyLine> byId =
                lines.findAllByOrderByName().stream().collect(Collectors.toMap(SupplyLine::id, Function.identity()));
        return supplies.findAllByOrderByName().stream()
                .map(supply -> known(supply, byId))
                .sorted(Comparator.comparing(Known::title, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    public Optional<Known> find(UUID id) {
        return supplies.findById(id)
                .map(supply -> new Known(
                        supply.id(),
                        supply.facts(),
                        lines.findById(supply.facts().lineId()).orElseThrow(),
                        supply.version()));
    }

    private static Known known(Supply supply, Map<UUID, SupplyLine> byId) {
        Supply.Facts facts = supply.facts();
        return new Known(supply.id(), facts, Objects.requireNonNull(byId.get(facts.lineId())), supply.version());
    }
}
