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

    /** What is left of a supply at both places, and since when it is watched, but not before the day that was asked from. */
    record Standing(UUID supplyId, BigDecimal quantity, LocalDate since) {}

    /** Whether there is an earlier movement ends at the first that is found; all are looked through only of what is new. */
    private static final String STANDING =
            """
            select s.supply_id, s.quantity,
                   case when exists (select 1 from posting p where p.supply_id = s.supply_id and p.doc_date <= :from and %1$s) then :from
                        else (select min(p.doc_date) from posting p where p.supply_id = s.supply_id and %1$s) end as since
            from (select supply_id, sum(quantity) as quantity from supply_stock group by supply_id) s""".formatted("case when p.account in ('BENCH', 'SHELF') then 1 else 0 end = 1");

    private record SoldRow(UUID supplyId, LocalDate soldOn, BigDecimal quantity) {}

    private final JdbcClient jdbc;

    BuyFacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param from earlier movements are as if they were of this day */
    Map<UUID, Standing> standing(LocalDate from) {
        return jdbc.sql(STANDING).param("from", from).query(Standing.class).stream()
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
