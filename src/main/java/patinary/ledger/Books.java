package patinary.ledger;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The books: records documents and keeps the postings true to them. A change is stored together with everything that
 * follows from it, or not at all.
 */
@Service
@Transactional
public class Books {

    private final Documents documents;
    private final Derivation derivation;
    private final SealStore sealed;
    private final Trail trail;
    private final Turn turn;
    private final Clock clock;

    Books(Documents documents, Derivation derivation, SealStore sealed, Trail trail, Turn turn, Clock clock) {
        this.documents = documents;
        this.derivation = derivation;
        this.sealed = sealed;
        this.trail = trail;
        this.turn = turn;
        this.clock = clock;
    }

    /**
     * Records a new document.
     *
     * @throws Refused where it cannot be true beside the others, or its year is sealed
     */
    public void record(Document document) {
        recordAll(List.of(document));
    }

    /**
     * Records several new documents, all or none; what follows from them is derived once.
     *
     * @throws Refused where one of them cannot be true beside the others, or its year is sealed
     */
    public void recordAll(List<? extends Document> several) {
        turn.take();
        trail.documents(several, null);
        refuseSealed(several);
        refuseTaken(several);
        for (Document document : several) {
            document.recorded(clock.instant());
            documents.persist(document);
            if (document.kind() == DocumentKind.YEAR_SEAL) {
                documents.flush();
                sealed.keep(document.ref());
            }
        }
        derivation.ofChanged(several);
    }

    /**
     * Takes over what was changed on a document that {@link #find} returned in the same transaction.
     *
     * @throws Refused where it cannot be true beside the others, or its year is sealed
     */
    public void changed(Document document) {
        turn.take();
        trail.documents(List.of(document), null);
        refuseSealed(document);
        derivation.ofChanged(List.of(document));
    }

    /**
     * Takes over a later step of a document, such as a new price of an offer or the day on which a sale was sent. The
     * document keeps its date, which may lie in a sealed year; the step may not, and it moves no postings there.
     *
     * @param step the day of the step
     * @throws Refused where the step is dated in a sealed year
     */
    public void continued(Document document, LocalDate step) {
        continuedAll(List.of(document), step);
    }

    /**
     * The same for several documents, all or none; what follows is derived once.
     *
     * @throws Refused where the step is dated in a sealed year
     */
    public void continuedAll(List<? extends Document> several, LocalDate step) {
        turn.take();
        trail.documents(several, step);
        if (several.stream().anyMatch(document -> !document.date().equals(document.storedDate()))) {
            throw new IllegalArgumentException("A step does not move the document to another day");
        }
        refuseSealed(several, step);
        derivation.ofChanged(several);
    }

    /**
     * Removes a document.
     *
     * @throws Refused where others rest on it, or its year is sealed
     */
    public void remove(Document document) {
        removeAll(List.of(document));
    }

    /**
     * Removes several documents, all or none; what follows is derived once.
     *
     * @throws Refused where others rest on one of them, or its year is sealed
     */
    public void removeAll(List<? extends Document> several) {
        turn.take();
        trail.documents(several, null);
        refuseSealed(
                several.stream().filter(document -> !isLatestSeal(document)).toList());
        several.forEach(document -> sealed.forget(document.id()));
        derivation.ofRemoved(several, () -> several.forEach(documents::remove));
    }

    /**
     * Takes documents back that were recorded, and takes over others that are put back to what they were by another road than this
     * class, all or none; what follows is derived once.
     *
     * @param recorded those that go
     * @param others the ids of those that are put back
     * @param putBack writes them past this class, and forgets what was loaded of them
     * @throws Refused where what is left cannot be true together, or its year is sealed
     */
    public void takeBack(List<? extends Document> recorded, Set<UUID> others, Runnable putBack) {
        turn.take();
        trail.documents(recorded, null);
        refuseSealed(recorded);
        derivation.ofTakenBack(recorded, others, () -> recorded.forEach(documents::remove), () -> {
            putBack.run();
            return others.stream()
                    .map(id -> documents.find(Document.class, id).orElseThrow())
                    .toList();
        });
    }

    /** A document as it is stored, whole and to be shown; one that is to be changed is {@linkplain #find found}. */
    @Transactional(readOnly = true)
    public <D extends Document> Optional<D> read(Class<D> type, UUID id) {
        return documents.read(type, id);
    }

    @Transactional(readOnly = true)
    public <D extends Document> Optional<D> find(Class<D> type, UUID id) {
        return documents.find(type, id);
    }

    /**
     * Derives all postings anew, after documents were brought in by another road than this class, or another costing method
     * was chosen. Seals that came without what they sealed, out of an archive from before it was kept, keep what their
     * documents give now.
     */
    public void rederive() {
        turn.take();
        derivation.ofAll();
    }

    /** The latest seal may be taken off, which opens its year again; an earlier one stays under it. */
    private boolean isLatestSeal(Document document) {
        return document.kind() == DocumentKind.YEAR_SEAL
                && documents.sealedUpTo().filter(document.date()::equals).isPresent();
    }

    private void refuseSealed(Document document) {
        refuseSealed(List.of(document));
    }

    /** Names every one of the documents that is, or was, dated in a sealed year. */
    private void refuseSealed(List<? extends Document> several) {
        documents
                .sealedUpTo()
                .ifPresent(last -> refuse(several.stream()
                        .filter(document ->
                                Stream.of(document.date(), storedDate(document)).anyMatch(date -> !date.isAfter(last)))
                        .toList()));
    }

    private static LocalDate storedDate(Document document) {
        LocalDate stored = document.storedDate();
        return stored == null ? document.date() : stored;
    }

    private void refuseSealed(List<? extends Document> several, LocalDate step) {
        documents.sealedUpTo().filter(last -> !step.isAfter(last)).ifPresent(last -> refuse(several));
    }

    /** One that is there already as the same kind was sent twice, and whoever records it knows that. */
    private void refuseTaken(List<? extends Document> several) {
        Map<UUID, DocumentKind> known = documents.kinds(several);
        refuse(
                several.stream()
                        .filter(document -> known.getOrDefault(document.id(), document.kind()) != document.kind())
                        .toList(),
                Problem.Reason.ID_TAKEN);
    }

    private static void refuse(List<? extends Document> sealed) {
        refuse(sealed, Problem.Reason.YEAR_SEALED);
    }

    private static void refuse(List<? extends Document> several, Problem.Reason reason) {
        if (!several.isEmpty()) {
            throw new Refused(several.stream()
                    .map(document -> new Problem(document.ref(), reason, null))
                    .toList());
        }
    }

    /**
     * Takes the books for the rest of this transaction, so that what else is done in it comes one after another too: new
     * codes of pieces, for instance, which two phones would otherwise draw at the same moment.
     */
    public void hold() {
        turn.take();
    }

    /** The shop's settings are about to change: they change one after another, so that the history tells whose change was whose. */
    public void settingsChange() {
        turn.take();
        trail.settings();
    }
}
