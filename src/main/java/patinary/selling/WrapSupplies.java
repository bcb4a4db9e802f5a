package patinary.selling;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.supplies.SupplyCatalog;
import patinary.web.Choice;

/** The supplies that something can be packed in: all but what was kept of a mixed pot. */
@Component
@Transactional(readOnly = true)
class WrapSupplies {

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
        Set<String> before =
                Set.copyOf(jdbc.sql("select supply_id from parcel_wrap union select supply_id from sale_wrap")
                        .query((row, number) -> row.getObject(1, UUID.class).toString())
                        .list());
        return catalog.choicesToBuy().stream()
                .collect(Collectors.partitioningBy(supply -> !before.contains(supply.value())))
                .values()
                .stream()
                .flatMap(List::stream)
                .toList();
    }
}
