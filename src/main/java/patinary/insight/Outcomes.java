package patinary.insight;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
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
            select piece_id, kind_id, kind, style_id, style, clock_from, sold_on, net_minor, supplies_minor, minutes, bought_minor, worked
            from piece_outcome""";

    private enum Kept {
        PIECES
    }

    private record Paying(List<Only> chosen, LocalDate today) {}

    private record Tried(List<Only> chosen, LocalDate today) {}

    private record Cells(List<Only> chosen, LocalDate today) {}

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
        return readings.of(new Paying(narrowing.chosen(), shop.today()), () -> rows(cells(narrowing)));
    }

    /** The advice tried on her own past, where that is long enough. */
    Optional<PayTrial> trial(Narrowing narrowing) {
        return readings.of(
                new Tried(narrowing.chosen(), shop.today()),
                () -> PayTrial.of(pieces(narrowing), aims.get(), shop.hourlyRate(), shop.today()));
    }

    Answer answer(Narrowing narrowing) {
        return new Answer(whatToPay(narrowing), trial(narrowing).orElse(null));
    }

    /** What is known of the pieces today, by kind and style. */
    Map<PayRow.Group, Pool> cells(Narrowing narrowing) {
        return readings.of(
                new Cells(narrowing.chosen(), shop.today()),
                () -> Pools.of(pieces(narrowing), aims.get().horizonDays(), shop.today()));
    }

    private List<PayRow> rows(Map<PayRow.Group, Pool> cells) {
        return cells.isEmpty() ? List.of() : WhatToPay.rows(cells, aims.get(), shop.hourlyRate());
    }

    private List<Outcome> pieces(Narrowing narrowing) {
        List<Outcome> all = readings.of(
                Kept.PIECES,
                () -> jdbc.sql(PIECES).query((row, number) -> past(row)).list());
        return narrowing.isWhole()
                ? all
                : all.stream().filter(one -> narrowing.has(one.piece())).toList();
    }

    /** By hand: of so many rows, asking for the type of each column would take longer than reading it. */
    private static Outcome past(ResultSet row) throws SQLException {
        Long net = row.getObject("net_minor", Long.class);
        return new Outcome(
                row.getObject("piece_id", UUID.class),
                new PayRow.Group(
                        row.getObject("kind_id", UUID.class),
                        row.getString("kind"),
                        row.getObject("style_id", UUID.class),
                        row.getString("style")),
                row.getObject("clock_from", LocalDate.class),
                row.getObject("sold_on", LocalDate.class),
                net == null ? null : Amount.of(net),
                Amount.of(row.getLong("supplies_minor")),
                row.getBigDecimal("minutes"),
                Amount.of(row.getLong("bought_minor")),
                row.getBoolean("worked"));
    }
}
