package patinary.history;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import patinary.ledger.Trail;

/**
 * What ids stand for, as far as it is there: read once for everything that a page tells.
 *
 * @param names how people call a thing
 * @param documents the kind and day of a document
 * @param dimensions in which dimension a supply is measured
 * @param there the subjects that are there
 */
record Called(
        Map<UUID, String> names, Map<UUID, Document> documents, Map<UUID, String> dimensions, Set<Subject> there) {

    Called() {
        this(new HashMap<>(), new HashMap<>(), new HashMap<>(), new HashSet<>());
    }

    /** @param kind a {@link patinary.ledger.DocumentKind} */
    record Document(String kind, LocalDate day) {}

    Optional<String> name(UUID id) {
        return Optional.ofNullable(names.get(id));
    }

    Optional<Document> document(UUID id) {
        return Optional.ofNullable(documents.get(id));
    }

    /** The settings always are. */
    boolean isThere(Subject subject) {
        return subject.kind().equals(Trail.SETTINGS) || there.contains(subject);
    }

    Optional<String> dimension(UUID supply) {
        return Optional.ofNullable(dimensions.get(supply));
    }
}
