package patinary.sheets;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.measure.Sides;
import patinary.money.Amount;
import patinary.money.Shares;

/** What was cut out of a supply that comes in sheets, in the canonical order. */
@Repository
class SheetCuts {

    /** Uses before these are forgotten by the drawing: their sheets are gone. */
    private static final int MOST = 500;

    /**
     * One use: a cut with its sides, or an area whose shape nobody wrote down.
     *
     * @param typed as she typed it
     * @param quantity in square centimetres, all cuts alike together
     * @param costMinor what it has cost so far: what the supply cost in its entry, shared by area over the cuts there
     */
    record Used(
            UUID entryId,
            LocalDate dated,
            String typed,
            BigDecimal quantity,
            @Nullable BigDecimal width,
            @Nullable BigDecimal height,
            int howMany,
            long costMinor) {

        Used costing(Amount share) {
            return new Used(entryId, dated, typed, quantity, width, height, howMany, share.minor());
        }

        List<CutOut> cuts() {
            List<CutOut> cuts = new ArrayList<>();
            for (int i = 0; i < howMany && width != null && height != null; i++) {
                cuts.add(CutOut.of(new Sides(width, height)));
            }
            return cuts.isEmpty() ? List.of(CutOut.shapeless(quantity)) : cuts;
        }
    }

    private final JdbcClient jdbc;

    SheetCuts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The latest uses, the earliest of them first. */
    List<Used> of(UUID supply) {
        List<Used> uses = jdbc.sql("""
                        select * from (
                            select u.bench_entry_id as entry_id, d.doc_date as dated, u.typed, u.quantity, c.width_cm as width,
                                   c.height_cm as height, coalesce(c.how_many, 1) as how_many, u.line,
                                   (select cast(coalesce(sum(p.amount_minor), 0) as bigint) from posting_about p
                                    where p.about_id = u.bench_entry_id
                                      and p.supply_id = u.supply_id and p.account not in ('BENCH', 'SHELF')) as cost_minor
                            from bench_use u
                            join document d on d.id = u.bench_entry_id
                            left join bench_cut c on c.bench_entry_id = u.bench_entry_id and c.line = u.line
                            where u.supply_id = :supply
                            order by d.doc_date desc, cast(d.id as varchar(36)) desc, u.line desc
                            fetch first :most rows only) latest
                        order by dated, cast(entry_id as varchar(36)), line
                        """)
                .param("supply", supply)
                .param("most", MOST)
                .query(Used.class)
                .list();
        Map<UUID, List<Used>> byEntry =
                uses.stream().collect(Collectors.groupingBy(Used::entryId, LinkedHashMap::new, Collectors.toList()));
        return byEntry.values().stream().flatMap(SheetCuts::sharedByArea).toList();
    }

    /** The books know what a supply cost in an entry, not which cut took which cent of it. */
    private static Stream<Used> sharedByArea(List<Used> ofEntry) {
        List<Amount> shares = Shares.split(
                Amount.of(ofEntry.get(0).costMinor()),
                ofEntry.stream().map(Used::quantity).toList());
        return IntStream.range(0, shares.size()).mapToObj(i -> ofEntry.get(i).costing(shares.get(i)));
    }

    BigDecimal left(UUID supply) {
        return jdbc.sql("select coalesce(sum(quantity), 0) from stock_left where supply_id = ? and place = 'BENCH'")
                .param(supply)
                .query(BigDecimal.class)
                .single();
    }
}
