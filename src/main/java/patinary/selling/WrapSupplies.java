package patinary.selling;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.supplies.SupplyCatalog;
import patinary.web.Choice;

/** The supplies that something can be packed in: all but what was kept of a mixed pot. */
@Component
@Transactional(readOnly = true)
class WrapSupplies {

    private record Offered(UUID id, String title, boolean packedIn) {}

    private final SupplyCatalog catalog;
    private final JdbcClient jdbc;

    WrapSupplies(SupplyCatalog catalog, JdbcClient jdbc) {
        this.catalog = catalog;
        this.jdbc = jdbc;
    }

    public List<SupplyCatalog.Known> all() {
        return catalog.toBuy();
    }

    /** What she packed in before stands first, so that a box is not looked for among the paints. */
    public List<Choice> choices() {
        return jdbc.sql("""
                        select s.id, l.name || ': ' || s.name as title,
                               s.id in (select supply_id from parcel_wrap union select supply_id from sale_wrap) as packed_in
                        from supply s
                        join supply_line l on l.id = s.supply_line_id
                        where not exists (select 1 from bench_pot p where p.kept_as = s.id)""").query(Offered.class).stream()
                .sorted(Comparator.comparing(Offered::packedIn)
                        .reversed()
                        .thenComparing(Offered::title, String.CASE_INSENSITIVE_ORDER))
                .map(supply -> Choice.named(supply.id().toString(), supply.title()))
                .toList();
    }
}
