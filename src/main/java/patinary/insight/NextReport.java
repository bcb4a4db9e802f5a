package patinary.insight;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;

/** Reads what to make next, and for how many the supplies are enough. */
@Repository
@Transactional(readOnly = true)
class NextReport {

    private enum Kept {
        NEEDS
    }

    private record Asking(MakeNext.Order order, Together by, List<Only> chosen, LocalDate today) {}

    private final JdbcClient jdbc;
    private final Outcomes outcomes;
    private final CurrentAims aims;
    private final CurrentShop shop;
    private final Readings readings;

    NextReport(JdbcClient jdbc, Outcomes outcomes, CurrentAims aims, CurrentShop shop, Readings readings) {
        this.jdbc = jdbc;
        this.outcomes = outcomes;
        this.aims = aims;
        this.shop = shop;
        this.readings = readings;
    }

    /** @param by what the pieces are brought together by; each level learns from its own groups how far they lie apart */
    List<NextRow> rows(MakeNext.Order order, Together by, Narrowing narrowing) {
        return narrowing.kept(
                readings, new Asking(order, by, narrowing.chosen(), shop.today()), those -> reckoned(order, by, those));
    }

    private List<NextRow> reckoned(MakeNext.Order order, Together by, Narrowing narrowing) {
        Aims now = aims.get();
        Map<PayRow.Group, Pool> groups = new LinkedHashMap<>();
        outcomes.cells(narrowing).forEach((cell, pool) -> groups.merge(by.of(cell), pool, Pool::plus));
        return MakeNext.rows(groups, now, order);
    }

    /** The finishes that the pieces of each row had most often, and for how many more the bench has enough. */
    Map<PayRow.Group, List<Readiness>> ready(List<NextRow> rows, Together by) {
        List<Readiness.Need> needs = readings.ahead(
                Kept.NEEDS,
                () -> jdbc.sql(
                                "select finish_id, finish, kind_id, style_id, pieces, supply_id, supply, needed, on_bench from finish_of_kind")
                        .query(Readiness.Need.class)
                        .list());
        return Readiness.of(needs, rows.stream().map(NextRow::group).toList(), by);
    }
}
