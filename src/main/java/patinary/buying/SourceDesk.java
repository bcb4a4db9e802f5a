package patinary.buying;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.money.Percent;

/** Adds, changes and removes sources. */
@Service
@Transactional
class SourceDesk {

    private final Sources sources;
    private final Trail trail;

    SourceDesk(Sources sources, Trail trail) {
        this.sources = sources;
        this.trail = trail;
    }

    @Transactional(readOnly = true)
    Optional<Source> find(UUID id) {
        return sources.findById(id);
    }

    /** Whether another source than this one has the name. */
    @Transactional(readOnly = true)
    boolean isTaken(String name, UUID own) {
        return sources.findAllByOrderByName().stream()
                .anyMatch(source ->
                        source.name().equalsIgnoreCase(name) && !source.id().equals(own));
    }

    void add(UUID id, SourceForm form, @Nullable Percent tax) {
        trail.thing("source", id);
        sources.save(new Source(id, form.name.strip(), form.note.strip(), form.resaleCertificate.strip(), tax));
    }

    void change(UUID id, SourceForm form, @Nullable Percent tax) {
        Source source = sources.findById(id).orElseThrow();
        if (source.version() != form.version) {
            throw new ObjectOptimisticLockingFailureException(Source.class, id);
        }
        trail.thing("source", id);
        source.rewrite(form.name.strip(), form.note.strip(), form.resaleCertificate.strip(), tax);
    }

    /** Fails with a data integrity violation where anything names the source. */
    void remove(UUID id) {
        sources.findById(id).ifPresent(sources::delete);
    }
}
