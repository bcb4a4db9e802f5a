package patinary.insight;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Page;
import patinary.web.Window;

/** What the pieces of one page of a list are called. */
@Repository
@Transactional(readOnly = true)
class PieceNames {

    /** A piece as every list names it. */
    record Name(UUID id, String code, String title) {}

    /** Something of a piece beside what the piece is called. */
    record Named<T>(Name piece, T row) {}

    private final JdbcClient jdbc;

    PieceNames(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The rows of one page of a longer list, with their names. */
    <T> Page<Named<T>> page(List<T> rows, Function<T, UUID> piece, Window window) {
        return Page.of(window, named(Page.within(rows, window).rows(), piece), rows.size());
    }

    /** All rows with their names, for a file. */
    <T> List<Named<T>> named(List<T> rows, Function<T, UUID> piece) {
        Map<UUID, Name> names = names(rows.stream().map(piece).distinct().toList());
        return rows.stream()
                .map(row -> new Named<>(names.getOrDefault(piece.apply(row), new Name(piece.apply(row), "", "")), row))
                .toList();
    }

    private Map<UUID, Name> names(Collection<UUID> pieces) {
        return pieces.isEmpty()
                ? Map.of()
                : jdbc
                        .sql("select id, code, title from piece where id in (:ids)")
                        .param("ids", pieces)
                        .query(Name.class)
                        .stream()
                        .collect(Collectors.toMap(Name::id, Function.identity()));
    }
}
