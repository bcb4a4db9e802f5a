package patinary.selling;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.measure.Dimension;
import patinary.measure.NamedMeasure;
import patinary.measure.Unit;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.web.Choice;
import patinary.web.Ids;

/** The supplies that can be sold, and how a pack of one is written. */
@Component
class RetailShelf {

    private record Offered(UUID id, String name) {}

    private final Supplies supplies;
    private final JdbcClient jdbc;

    RetailShelf(Supplies supplies, JdbcClient jdbc) {
        this.supplies = supplies;
        this.jdbc = jdbc;
    }

    /** What stands on the shelf, or has a retail price. */
    List<Choice> choices() {
        return jdbc.sql("""
                        select s.id, l.name || ', ' || s.name as name
                        from supply s
                        join supply_line l on l.id = s.supply_line_id
                        where (s.retail_price_minor is not null or exists (
                            select 1 from stock_left sl
                            where sl.supply_id = s.id and sl.place = 'SHELF' and sl.quantity > 0))
                          and not exists (select 1 from bench_pot p where p.kept_as = s.id)
                        order by 2""").query(Offered.class).list().stream()
                .map(row -> Choice.named(row.id().toString(), row.name()))
                .toList();
    }

    @Transactional(readOnly = true)
    public Optional<Supply.Facts> find(String id) {
        return Ids.read(id).flatMap(supplies::findById).map(Supply::facts);
    }

    /** What is known of several supplies, read at once. */
    @Transactional(readOnly = true)
    public Map<UUID, Supply.Facts> all(Collection<UUID> ids) {
        return ids.isEmpty()
                ? Map.of()
                : supplies.findAllByIdIn(ids).stream().collect(Collectors.toMap(Supply::id, Supply::facts));
    }

    /** The smallest pack, as typed; one thing where it is counted. */
    static String usualPack(Supply.Facts supply) {
        if (!supply.packs().isEmpty()) {
            return "1 " + supply.packs().get(0).name();
        }
        return supply.dimension() == Dimension.COUNT ? "1" : "";
    }

    /** A content as it can be typed again: in whole packs by the name of the pack, or in the base unit. */
    static String written(Supply.Facts supply, BigDecimal content) {
        return supply.packs().stream()
                .filter(pack -> NamedMeasure.isName(pack.name()))
                .filter(pack -> content.remainder(pack.quantity()).signum() == 0)
                .reduce((smaller, larger) -> larger)
                .map(pack -> number(content.divide(pack.quantity())) + " " + pack.name())
                .orElseGet(() -> supply.dimension() == Dimension.COUNT
                        ? number(content)
                        : number(content) + " " + Unit.base(supply.dimension()).code());
    }

    private static String number(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
