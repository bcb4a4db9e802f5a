package patinary.insight;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;

/** Reads what became of the pieces, already added up by kind and style, and works out what to pay. */
@Repository
@Transactional(readOnly = true)
class Outcomes {

    /** Only pieces whose full time is over count as tried: neither the young unsold ones nor the young sold ones. */
    private static final String CELLS = """
            select o.kind_id, o.kind, o.style_id, o.style, count(*) as pieces,
                   sum(case when o.clock_from <= cast(:full as date) then 1 else 0 end) as tried,
                   sum(case when o.clock_from <= cast(:full as date)
                        and o.sold_on <= o.clock_from + cast(:days as integer) then 1 else 0 end) as sold_in_time,
                   count(o.net_minor) as sold,
                   coalesce(sum(cast(o.net_minor as numeric(30, 0))), 0) as net_sum,
                   coalesce(sum(cast(o.net_minor as numeric(30, 0)) * o.net_minor), 0) as net_squares,
                   sum(case when o.worked then 1 else 0 end) as worked,
                   coalesce(sum(case when o.worked then cast(o.supplies_minor as numeric(30, 0)) end), 0) as supplies_sum,
                   coalesce(sum(case when o.worked
                        then cast(o.supplies_minor as numeric(30, 0)) * o.supplies_minor end), 0) as supplies_squares,
                   coalesce(sum(case when o.worked then o.minutes end), 0) as minutes_sum,
                   coalesce(sum(case when o.worked then o.minutes * o.minutes end), 0) as minutes_squares,
                   coalesce(sum(case when o.worked then cast(o.bought_minor as numeric(30, 0)) end), 0) as bought_sum,
                   coalesce(sum(case when o.worked
                        then cast(o.bought_minor as numeric(30, 0)) * o.bought_minor end), 0) as bought_squares
            from piece_outcome o
            where (:whole or o.piece_id in (:pieces))
            group by o.kind_id, o.kind, o.style_id, o.style
            order by o.kind, o.style""";

    private record Cell(
            @Nullable UUID kindId,
            String kind,
            @Nullable UUID styleId,
            String style,
            long pieces,
            long tried,
            long soldInTime,
            long sold,
            BigDecimal netSum,
            BigDecimal netSquares,
            long worked,
            BigDecimal suppliesSum,
            BigDecimal suppliesSquares,
            BigDecimal minutesSum,
            BigDecimal minutesSquares,
            BigDecimal boughtSum,
            BigDecimal boughtSquares) {

        PayRow.Group group() {
            return new PayRow.Group(kindId, kind, styleId, style);
        }

        Pool pool() {
            return new Pool(
                    pieces,
                    new Tries(tried, soldInTime),
                    new Moments(sold, netSum, netSquares),
                    new Moments(worked, suppliesSum, suppliesSquares),
                    new Moments(worked, minutesSum, minutesSquares),
                    new Moments(worked, boughtSum, boughtSquares));
        }
    }

    private static final String PIECES = """
            select piece_id, kind_id, kind, style_id, style, clock_from, sold_on, net_minor, supplies_minor, minutes, bought_minor, worked
            from piece_outcome
            where (:whole or piece_id in (:pieces))""";

    private final JdbcClient jdbc;
    private final CurrentShop shop;
    private final CurrentAims aims;

    Outcomes(JdbcClient jdbc, CurrentShop shop, CurrentAims aims) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.aims = aims;
    }

    /** The whole shop first; empty where there is no piece. */
    List<PayRow> whatToPay() {
        return whatToPay(Narrowing.WHOLE);
    }

    List<PayRow> whatToPay(Narrowing narrowing) {
        Aims now = aims.get();
        Map<PayRow.Group, Pool> cells = cells(shop.today(), now.horizonDays(), narrowing);
        return cells.isEmpty() ? List.of() : WhatToPay.rows(cells, now, shop.hourlyRate());
    }

    /** The advice tried on her own past, where that is long enough. */
    Optional<PayTrial> trial(Narrowing narrowing) {
        List<PayTrial.Past> pieces = jdbc.sql(PIECES)
                .param("whole", narrowing.isWhole())
                .param("pieces", narrowing.ids())
                .query((row, number) -> past(row))
                .list();
        return PayTrial.of(pieces, aims.get(), shop.hourlyRate(), shop.today());
    }

    /** By hand: of so many rows, asking for the type of each column would take longer than reading it. */
    private static PayTrial.Past past(ResultSet row) throws SQLException {
        Long net = row.getObject("net_minor", Long.class);
        return new PayTrial.Past(
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

    Map<PayRow.Group, Pool> cells(LocalDate today, int horizonDays, Narrowing narrowing) {
        Map<PayRow.Group, Pool> cells = new LinkedHashMap<>();
        jdbc.sql(CELLS)
                .param("full", today.minusDays(horizonDays))
                .param("days", horizonDays)
                .param("whole", narrowing.isWhole())
                .param("pieces", narrowing.ids())
                .query(Cell.class)
                .list()
                .forEach(cell -> cells.merge(cell.group(), cell.pool(), Pool::plus));
        return cells;
    }
}
