package patinary.counting;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Reads, of all supplies at once, what the buying list is made of. */
@Repository
@Transactional(readOnly = true)
class BuyFacts {

    /** What is left of a supply at both places, and the day of its first movement. */
    record Standing(UUID supplyId, BigDecimal quantity, LocalDate since) {}

    private record SoldRow(UUID supplyId, LocalDate soldOn, BigDecimal quantity) {}

    private final JdbcClient jdbc;

    BuyFacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<UUID, Standing> standing() {
        return jdbc.sql("""
                        select supply_id, sum(quantity) as quantity, min(doc_date) as since
                        from posting where account in ('BENCH', 'SHELF') and supply_id is not null
                        group by supply_id""").query(Standing.class).stream()
                .collect(Collectors.toMap(Standing::supplyId, Function.identity()));
    }

    Map<UUID, List<Pace.Sold>> sold(LocalDate from) {
        return jdbc.sql("""
                        select p.supply_id, p.doc_date as sold_on, -sum(p.quantity) as quantity
                        from posting p join document d on d.id = p.document_id
                        where p.account = 'SHELF' and d.kind = 'SALE' and p.quantity < 0 and p.doc_date >= ?
                        group by p.supply_id, p.document_id, p.doc_date""").param(from).query(SoldRow.class).stream()
                .collect(Collectors.groupingBy(
                        SoldRow::supplyId,
                        Collectors.mapping(row -> new Pace.Sold(row.soldOn(), row.quantity()), Collectors.toList())));
    }

    Map<UUID, BuyRow.Bought> bought() {
        return jdbc
                .sql("select supply_id, source_id, source, price_minor, content from supply_source")
                .query(BuyRow.Bought.class)
                .stream()
                .collect(Collectors.toMap(BuyRow.Bought::supplyId, Function.identity()));
    }
}
