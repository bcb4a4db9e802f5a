package patinary.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Holds what is carried forward of supplies against their moves. */
@Component
class CarriedCheck {

    private final CarriedStore store;
    private final BooksSettings settings;

    CarriedCheck(CarriedStore store, BooksSettings settings) {
        this.store = store;
        this.settings = settings;
    }

    /** @param moves the moves of all documents */
    List<Finding> findings(List<DocumentMoves> moves) {
        Map<UUID, List<StrandMove>> bySupply = new HashMap<>();
        store.supplies().forEach(supply -> bySupply.put(supply, new ArrayList<>()));
        moves.stream()
                .flatMap(document -> Strands.of(document).stream())
                .filter(move -> bySupply.containsKey(move.strand()))
                .forEach(move -> bySupply.get(move.strand()).add(move));
        return bySupply.entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey().toString()))
                .flatMap(entry -> differences(entry.getKey(), entry.getValue()).stream())
                .toList();
    }

    private List<Finding> differences(UUID supply, List<StrandMove> moves) {
        List<Carried> kept = store.of(supply);
        List<Carried> anew = CarriedAnew.of(
                settings.stockMethod(), supply, moves, kept, store.rule().uses());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            String expected = CarriedText.of(anew.get(i).places());
            String found = CarriedText.of(kept.get(i).places());
            if (!expected.equals(found)) {
                String subject = supply + " " + kept.get(i).day();
                findings.add(Finding.books(Finding.What.CARRIED, subject, expected, found));
            }
        }
        return findings;
    }
}
