package patinary.insight;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;

/** Reads what became of the pieces, and works out what to pay. */
@Repository
@Transactional(readOnly = true)
class Outcomes {

    /**
     * What to pay, and how that would have done.
     *
     * @param rows the whole shop first; empty where there is no piece
     * @param trial the advice tried on her own past; null where that is not long enough
     */
    record Answer(List<PayRow> rows, @Nullable PayTrial trial) {}

    private static final String PIECES = """
            select piece_id, kind_id, style_id, offered_on, sold_on, net_minor, off_minor, supplies_minor, minutes, bought_minor, worked
            from piece_outcome""";

    private enum Kept {
        PIECES
    }

    private record Paying(List<Only> chosen, LocalDate today) {}

    private record Tried(List<Only> chosen, LocalDate today) {}

    private record Cells(List<Only> chosen, LocalDate today) {}

    private record RestingOn(PayRow.Group group, Together level, List<Only> chosen) {}

    private final JdbcClient jdbc;
    private final CurrentShop shop;
    private final CurrentAims aims;
    private final Readings readings;

    Outcomes(JdbcClient jdbc, CurrentShop shop, CurrentAims aims, Readings readings) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.aims = aims;
        this.readings = readings;
    }

    /** The whole shop first; empty where there is no piece. */
    List<PayRow> whatToPay() {
        return whatToPay(Narrowing.WHOLE);
    }

    List<PayRow> whatToPay(Narrowing narrowing) {
        return narrowing.kept(readings, new Paying(narrowing.chosen(), shop.today()), those -> rows(cells(those)));
    }

    /** The advice tried on her own past, where that is long enough. */
    Optional<PayTrial> trial(Narrowing narrowing) {
        return narrowing.kept(
                readings,
                new Tried(narrowing.chosen(), shop.today()),
                those -> PayTrial.of(pieces(those), aims.get(), shop.hourlyRate(), shop.today()));
    }

    Answer answer(Narrowing narrowing) {
        return new Answer(whatToPay(narrowing), trial(narrowing).orElse(null));
    }

    /** What is known of the pieces today, by kind and style. */
    Map<PayRow.Group, Pool> cells(Narrowing narrowing) {
        return narrowing.kept(
                readings,
                new Cells(narrowing.chosen(), shop.today()),
                those -> Pools.of(pieces(those), aims.get().horizonDays(), shop.today()));
    }

    private List<PayRow> rows(Map<PayRow.Group, Pool> cells) {
        return cells.isEmpty() ? List.of() : WhatToPay.rows(cells, aims.get(), shop.hourlyRate());
    }

    /** The pieces that a group's figures rest on: those sold last first, then those offered last. */
    List<Outcome> behind(PayRow.Group group, Together level, Narrowing narrowing) {
        return readings.of(
                new RestingOn(group, level, narrowing.chosen()),
                () -> pieces(narrowing).stream()
                        .filter(one -> level.holds(group, one.group()))
                        .sorted(Outcome.LATEST)
                        .toList());
    }

    private List<Outcome> pieces(Narrowing narrowing) {
        List<Outcome> all = readings.ahead(Kept.PIECES, this::read);
        return narrowing.isWhole()
                ? all
                : all.stream().filter(one -> narrowing.has(one.piece())).toList();
    }

    private List<Outcome> read() {
        PieceGroups groups = new PieceGroups(Names.of(jdbc, "object_kind"), Names.of(jdbc, "style"));
        FewDays days = new FewDays(
                PieceDays.of(jdbc.sql("select piece_id, on_day from piece_taken_over")),
                PieceDays.of(jdbc.sql("select piece_id, on_day from piece_let_go")));
        return jdbc.sql(PIECES)
                .query((row, number) -> outcome(row, groups, days))
                .list();
    }

    /** By number: of so many rows, looking for the names of columns would take as long as reading them. */
    private static Outcome outcome(ResultSet row, PieceGroups groups, FewDays days) throws SQLException {
        UUID piece = row.getObject(1, UUID.class);
        LocalDate offered = row.getObject(4, LocalDate.class);
        LocalDate sold = row.getObject(5, LocalDate.class);
        Long net = row.getObject(6, Long.class);
        return Outcome.of(
                piece,
                groups.of(row.getObject(2, UUID.class), row.getObject(3, UUID.class)),
                days.of(piece, offered, sold),
                net == null ? null : Amount.of(net),
                Amount.of(row.getLong(7)),
                Amount.of(row.getLong(8)),
                row.getBigDecimal(9),
                Amount.of(row.getLong(10)),
                row.getBoolean(11));
    }

    /**
     * Days that few pieces have.
     *
     * @param taken on which it was taken into the books from before
     * @param letGo on which it went otherwise than by a sale; told of a piece that never was on offer
     */
    private record FewDays(Map<UUID, LocalDate> taken, Map<UUID, LocalDate> letGo) {

        private Outcome.Days of(UUID piece, @Nullable LocalDate offered, @Nullable LocalDate sold) {
            return new Outcome.Days(
                    offered, sold, taken.get(piece), offered == null && sold == null ? letGo.get(piece) : null);
        }
    }

    /** Of many pieces the same few groups of kind and style, each made once. */
    private static final class PieceGroups {

        private record Ids(@Nullable UUID kind, @Nullable UUID style) {}

        private final Map<UUID, String> kinds;
        private final Map<UUID, String> styles;
        private final Map<Ids, PayRow.Group> groups = new HashMap<>();

        private PieceGroups(Map<UUID, String> kinds, Map<UUID, String> styles) {
            this.kinds = kinds;
            this.styles = styles;
        }

        private PayRow.Group of(@Nullable UUID kind, @Nullable UUID style) {
            return groups.computeIfAbsent(
                    new Ids(kind, style),
                    ids -> new PayRow.Group(kind, kinds.getOrDefault(kind, ""), style, styles.getOrDefault(style, "")));
        }
    }
}
