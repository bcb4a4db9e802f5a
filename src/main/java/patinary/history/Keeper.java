package patinary.history;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;
import patinary.ledger.Document;
import patinary.ledger.Trail;
import patinary.ledger.Turn;

/**
 * Keeps the history: what was there is read before it is written, what became of it when the transaction commits. What is the
 * same afterwards leaves no row.
 */
@Component
class Keeper implements Trail {

    private final KeptRows rows;
    private final Changes changes;
    private final Hand hand;
    private final Turn turn;
    private final Clock clock;

    Keeper(KeptRows rows, Changes changes, Hand hand, Turn turn, Clock clock) {
        this.rows = rows;
        this.changes = changes;
        this.hand = hand;
        this.turn = turn;
        this.clock = clock;
    }

    @Override
    public void documents(Collection<? extends Document> documents, @Nullable LocalDate step) {
        Map<String, List<UUID>> byKind = documents.stream()
                .collect(Collectors.groupingBy(
                        document -> KeptRows.table(document.kind()),
                        LinkedHashMap::new,
                        Collectors.mapping(Document::id, Collectors.toList())));
        byKind.forEach((kind, ids) -> about(kind, ids, step, step == null));
    }

    @Override
    public void thing(String table, UUID id) {
        takeTurn();
        about(table, List.of(id), null, false);
    }

    @Override
    public void outOf(String file) {
        takeTurn();
        act().outOf(file);
    }

    /** Everything in this transaction takes back an act. */
    void undoing(UUID act) {
        takeTurn();
        act().undoing(act);
    }

    /** What a change was about is about to become what it was; taking back a later step is a step of that day. */
    void takingBack(Change change) {
        about(change.kind(), List.of(change.subject()), change.stepOn(), change.stepOn() == null);
    }

    /** The act of this transaction. */
    UUID current() {
        return act().id();
    }

    /** Who records documents took it before the history hears of them; everything else is heard of here first. */
    private void takeTurn() {
        if (!TransactionSynchronizationManager.hasResource(this)) {
            turn.take();
        }
    }

    private void about(String kind, List<UUID> ids, @Nullable LocalDate step, boolean itself) {
        Act act = act();
        List<UUID> fresh =
                ids.stream().filter(id -> !act.knows(new Subject(kind, id))).toList();
        Map<UUID, Content> there = fresh.isEmpty() ? Map.of() : rows.read(kind, fresh);
        for (UUID id : fresh) {
            Subject subject = new Subject(kind, id);
            act.was(subject, there.get(id));
            if (step != null) {
                act.steps(subject, step);
            }
        }
        if (itself) {
            ids.forEach(id -> act.changesItself(new Subject(kind, id)));
        }
    }

    private Act act() {
        Act known = (Act) TransactionSynchronizationManager.getResource(this);
        if (known != null) {
            return known;
        }
        Act act = new Act();
        TransactionSynchronizationManager.registerSynchronization(new AtCommit(act));
        TransactionSynchronizationManager.bindResource(this, act);
        return act;
    }

    private void write(Act act) {
        changes.flush();
        Map<Subject, Optional<Content>> before = act.before();
        Map<String, Set<UUID>> byKind = before.keySet().stream()
                .collect(Collectors.groupingBy(
                        Subject::kind, LinkedHashMap::new, Collectors.mapping(Subject::id, Collectors.toSet())));
        Map<Subject, Content> after = new LinkedHashMap<>();
        byKind.forEach((kind, ids) ->
                rows.read(kind, ids).forEach((id, content) -> after.put(new Subject(kind, id), content)));
        Instant now = now();
        List<Change> kept = new ArrayList<>();
        before.forEach((subject, was) -> {
            Content is = after.get(subject);
            if (!Objects.equals(was.orElse(null), is)) {
                kept.add(change(act, kept.size() + 1, now, subject, was.orElse(null), is));
            }
        });
        if (!kept.isEmpty()) {
            changes.add(kept);
            hand.did(act.id());
        }
    }

    /** Later than every change before it, even where the machine's clock was set back: the order of changes is that of their moments. */
    private Instant now() {
        Instant clocked = clock.instant().truncatedTo(ChronoUnit.MICROS);
        return changes.latest()
                .map(latest -> latest.plus(1, ChronoUnit.MICROS))
                .filter(clocked::isBefore)
                .orElse(clocked);
    }

    private Change change(
            Act act, int place, Instant now, Subject subject, @Nullable Content was, @Nullable Content is) {
        Content latest = is == null ? Objects.requireNonNull(was) : is;
        String day = latest.cell(subject.kind(), "date");
        return new Change(
                UUID.randomUUID(),
                act.id(),
                place,
                now,
                hand.who(),
                act.undoes() != null ? CameBy.UNDO : act.file().isEmpty() ? hand.cameBy() : CameBy.FILE,
                act.file(),
                subject.kind(),
                subject.id(),
                day.isEmpty() ? null : LocalDate.parse(day),
                act.step(subject),
                act.undoes(),
                was,
                is);
    }

    /** Writes when the transaction is about to commit, and lets go of the act whatever becomes of it. */
    private final class AtCommit implements TransactionSynchronization {

        private final Act act;

        AtCommit(Act act) {
            this.act = act;
        }

        @Override
        public void suspend() {
            TransactionSynchronizationManager.unbindResource(Keeper.this);
        }

        @Override
        public void resume() {
            TransactionSynchronizationManager.bindResource(Keeper.this, act);
        }

        @Override
        public void beforeCommit(boolean readOnly) {
            write(act);
        }

        @Override
        public void afterCompletion(int status) {
            TransactionSynchronizationManager.unbindResourceIfPossible(Keeper.this);
        }
    }
}
