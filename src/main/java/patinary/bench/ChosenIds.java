package patinary.bench;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import patinary.web.Ids;

/** Reads ids that a form brought back; what is none is left out and found missing later. */
final class ChosenIds {

    private ChosenIds() {}

    static List<UUID> read(Collection<String> texts) {
        return texts.stream()
                .map(Ids::read)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
