package patinary.history;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.exchange.Content;

/** What one transaction is doing: everything it is about to write, as it was before. */
final class Act {

    private final UUID id = UUID.randomUUID();
    private final Map<Subject, Optional<Content>> before = new LinkedHashMap<>();
    private final Map<Subject, LocalDate> steps = new LinkedHashMap<>();
    private String file = "";
    private @Nullable UUID undoes;

    UUID id() {
        return id;
    }

    boolean knows(Subject subject) {
        return before.containsKey(subject);
    }

    /** Remembers a subject as it was; what was remembered first stays. */
    void was(Subject subject, @Nullable Content content) {
        before.putIfAbsent(subject, Optional.ofNullable(content));
    }

    /** Takes note of a later step; a change of the document itself, before it or after, counts for more. */
    void steps(Subject subject, LocalDate day) {
        steps.put(subject, day);
    }

    void changesItself(Subject subject) {
        steps.remove(subject);
    }

    void outOf(String name) {
        file = name;
    }

    void undoing(UUID act) {
        undoes = act;
    }

    Map<Subject, Optional<Content>> before() {
        return before;
    }

    @Nullable
    LocalDate step(Subject subject) {
        return steps.get(subject);
    }

    String file() {
        return file;
    }

    @Nullable
    UUID undoes() {
        return undoes;
    }
}
