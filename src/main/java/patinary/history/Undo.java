package patinary.history;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;
import patinary.exchange.UnreadableContent;
import patinary.ledger.Books;
import patinary.ledger.DocumentKind;
import patinary.web.NotFound;

/**
 * Takes an act back: puts what it changed back to what it was, all of it or nothing, and has the books derive what follows. It
 * may be undone in its turn.
 */
@Service
class Undo {

    private final Changes changes;
    private final KeptRows rows;
    private final Keeper keeper;
    private final PuttingBack puttingBack;
    private final Books books;

    Undo(Changes changes, KeptRows rows, Keeper keeper, PuttingBack puttingBack, Books books) {
        this.changes = changes;
        this.rows = rows;
        this.keeper = keeper;
        this.puttingBack = puttingBack;
        this.books = books;
    }

    /**
     * Takes an act back.
     *
     * @return the act that did so
     * @throws NotFound where there is none
     * @throws CannotUndo where something was changed since, lies in a sealed year or is named elsewhere
     * @throws patinary.ledger.Refused where what was cannot be true beside the other documents
     */
    @Transactional
    public UUID undo(UUID act) {
        books.hold();
        List<Change> all = changes.of(act);
        if (all.isEmpty()) {
            throw new NotFound("act " + act);
        }
        refuseWhereChangedSince(all);
        refuseSealed(all);
        keeper.undoing(act);
        try {
            puttingBack.putBack(all);
        } catch (DataIntegrityViolationException named) {
            throw new CannotUndo(CannotUndo.Reason.NAMED, named);
        } catch (UnreadableContent unreadable) {
            throw new CannotUndo(CannotUndo.Reason.UNREADABLE, unreadable);
        }
        return keeper.current();
    }

    /** Whether everything that an act changed is as it left it; what else forbids undoing is found when it is tried. */
    @Transactional(readOnly = true)
    public boolean mayBe(UUID act) {
        List<Change> all = changes.of(act);
        return !all.isEmpty() && all.stream().noneMatch(Undo::isSeal) && isAsLeft(all);
    }

    private void refuseWhereChangedSince(List<Change> all) {
        if (all.stream().anyMatch(Undo::isSeal)) {
            throw new CannotUndo(CannotUndo.Reason.SEAL);
        }
        if (!isAsLeft(all)) {
            throw new CannotUndo(CannotUndo.Reason.CHANGED_SINCE);
        }
    }

    private boolean isAsLeft(List<Change> all) {
        Map<Subject, Content> now = now(all);
        return all.stream().allMatch(change -> isAsLeft(now.get(subject(change)), change));
    }

    /** What the act did not touch may have changed since, such as what was packed of a sale. */
    private static boolean isAsLeft(@Nullable Content now, Change change) {
        if (now == null || change.after() == null) {
            return now == null && change.after() == null;
        }
        return change.tables().stream()
                .allMatch(table -> now.rows(table).equals(change.after().rows(table)));
    }

    private Map<Subject, Content> now(List<Change> all) {
        Map<Subject, Content> now = new HashMap<>();
        all.stream()
                .filter(change -> KeptRows.tables().contains(change.kind()))
                .collect(Collectors.groupingBy(Change::kind, Collectors.mapping(Change::subject, Collectors.toSet())))
                .forEach((kind, ids) ->
                        rows.read(kind, ids).forEach((id, content) -> now.put(new Subject(kind, id), content)));
        return now;
    }

    /** A later step is held against its own day, as when it was taken; everything else against both days of the document. */
    private void refuseSealed(List<Change> all) {
        Optional<LocalDate> sealed = changes.sealedUpTo();
        if (sealed.isPresent() && all.stream().flatMap(Undo::days).anyMatch(day -> !day.isAfter(sealed.get()))) {
            throw new CannotUndo(CannotUndo.Reason.SEALED);
        }
        Optional<Integer> year = changes.sealedYear();
        if (year.isPresent() && all.stream().anyMatch(change -> OfSettings.reaches(change, year.get()))) {
            throw new CannotUndo(CannotUndo.Reason.SEALED);
        }
    }

    private static Stream<LocalDate> days(Change change) {
        if (change.stepOn() != null) {
            return Stream.of(change.stepOn());
        }
        if (KeptRows.kind(change.kind()).isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(Optional.ofNullable(change.before()), Optional.ofNullable(change.after()))
                .flatMap(Optional::stream)
                .map(content -> LocalDate.parse(content.cell(change.kind(), "date")));
    }

    private static boolean isSeal(Change change) {
        return KeptRows.kind(change.kind())
                .filter(kind -> kind == DocumentKind.YEAR_SEAL)
                .isPresent();
    }

    private static Subject subject(Change change) {
        return new Subject(change.kind(), change.subject());
    }
}
