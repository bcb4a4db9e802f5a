package patinary.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import patinary.web.Fmt;

/** Puts stored changes into words. */
@Component
class Telling {

    private final HistoryWords words;
    private final Names names;
    private final Fmt fmt;

    Telling(HistoryWords words, Names names, Fmt fmt) {
        this.words = words;
        this.names = names;
        this.fmt = fmt;
    }

    /** What was done together stands together, in the order in which it comes; with every field that differs. */
    List<Told.Done> told(List<Change> changes) {
        Called ids = names.in(
                changes.stream()
                        .flatMap(change -> Stream.of(change.before(), change.after()))
                        .filter(Objects::nonNull)
                        .toList(),
                changes.stream().map(Telling::subject).collect(Collectors.toSet()));
        return grouped(changes, change -> about(change, ids));
    }

    /** The same for a list: without the fields. */
    List<Told.Done> briefly(List<Change> changes) {
        Called ids = names.in(changes.stream().map(Change::latest).toList());
        return grouped(changes, change -> brief(change, ids));
    }

    private List<Told.Done> grouped(List<Change> changes, Function<Change, Told.About> about) {
        Map<UUID, List<Change>> acts = new LinkedHashMap<>();
        changes.forEach(change ->
                acts.computeIfAbsent(change.act(), fresh -> new ArrayList<>()).add(change));
        return acts.values().stream().map(act -> done(act, about)).toList();
    }

    private Told.Done done(List<Change> act, Function<Change, Told.About> about) {
        Change first = act.get(0);
        return new Told.Done(
                first.act(),
                fmt.moment(first.at()),
                first.who(),
                word(first.cameBy()),
                first.file(),
                first.undoes(),
                act.stream().map(about).toList());
    }

    private Told.About brief(Change change, Called ids) {
        return new Told.About(
                words.kind(change.kind()),
                words.title(subject(change), change.latest(), ids),
                word(change.what()),
                null,
                List.of());
    }

    private Told.About about(Change change, Called ids) {
        Subject subject = subject(change);
        return new Told.About(
                words.kind(change.kind()),
                words.title(subject, change.latest(), ids),
                word(change.what()),
                Pages.of(subject).filter(page -> ids.isThere(subject)).orElse(null),
                Differences.between(change.before(), change.after()).stream()
                        .map(row -> line(change, row, ids))
                        .toList());
    }

    private static Subject subject(Change change) {
        return new Subject(change.kind(), change.subject());
    }

    private Told.Line line(Change change, Differences.RowChange row, Called ids) {
        boolean own = row.table().equals(change.kind());
        String telling = own ? "" : words.line(row.table(), row.row(), ids);
        String called = words.rows(row.table());
        return new Told.Line(
                own,
                telling.isEmpty() ? called : called + ": " + telling,
                word(row.what()),
                row.cells().stream()
                        .map(cell -> new Told.Field(
                                words.field(row.table(), cell.column()),
                                words.cell(row.table(), cell.column(), cell.before(), row.row(), ids),
                                words.cell(row.table(), cell.column(), cell.after(), row.row(), ids)))
                        .toList());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
