package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.measure.Dimension;
import patinary.money.Amount;

/** The retail shelf at the end of a day, summed from the postings up to that day. */
@Repository
class RetailList {

    /** Decimals of a minor unit in what is not rounded. */
    private static final int SCALE = 14;

    /**
     * One supply that stands on the shelf, is priced for it, or was sold from it.
     *
     * @param quantity what stood there, in the base unit
     * @param costMinor its cost
     * @param priceMinor what is asked for one pack now
     * @param packQuantity what the smallest pack holds; one thing where the supply is counted and has no pack
     * @param soldQuantity what was sold so far, less what came back
     * @param salesMinor what was paid for it, less what was given back, without tax and shipping
     * @param soldCostMinor what that had cost
     */
    record Row(
            UUID id,
            String name,
            String lineName,
            Dimension dimension,
            BigDecimal quantity,
            long costMinor,
            @Nullable Long priceMinor,
            @Nullable String pack,
            @Nullable BigDecimal packQuantity,
            BigDecimal soldQuantity,
            long salesMinor,
            long soldCostMinor,
            boolean isLow) {

        /** What one pack cost, rounded half up; null where nothing stands there or no pack is known. */
        public @Nullable Long packCostMinor() {
            if (packQuantity == null || quantity.signum() <= 0) {
                return null;
            }
            return Amount.of(costMinor)
                    .part(packQuantity, quantity, RoundingMode.HALF_UP)
                    .minor();
        }

        /** What is left of the price of one pack, whole percent of the price. */
        public @Nullable Long marginPercent() {
            Long cost = packCostMinor();
            if (cost == null || priceMinor == null || priceMinor == 0) {
                return null;
            }
            return BigDecimal.valueOf((priceMinor - cost) * 100)
                    .divide(BigDecimal.valueOf(priceMinor), 0, RoundingMode.HALF_UP)
                    .longValue();
        }

        /** What so much of it is asked when it is sold by itself, in minor units, not rounded; null without a price. */
        @Nullable
        BigDecimal askedFor(BigDecimal much) {
            if (priceMinor == null || packQuantity == null) {
                return null;
            }
            return BigDecimal.valueOf(priceMinor).multiply(much).divide(packQuantity, SCALE, RoundingMode.HALF_UP);
        }

        /**
         * What so much of it costs, in minor units, not rounded: by what stands there, else by what was sold; null where
         * neither tells.
         */
        @Nullable
        BigDecimal costOf(BigDecimal much) {
            boolean isThere = quantity.signum() > 0;
            BigDecimal of = isThere ? quantity : soldQuantity;
            long cost = isThere ? costMinor : soldCostMinor;
            if (of.signum() <= 0 || cost < 0) {
                return null;
            }
            return BigDecimal.valueOf(cost).multiply(much).divide(of, SCALE, RoundingMode.HALF_UP);
        }

        /** What the sales left over their cost, before fees. */
        public long earnedMinor() {
            return salesMinor - soldCostMinor;
        }
    }

    /**
     * Added up for all supplies at once, beginning with the sums: joined to each supply, H2 adds up all postings for each of them. It would
     * begin with the index of pieces where none is set, which are most of all postings, so that is asked behind a case.
     */
    private static final String ROWS = """
            select s.id, s.name, l.name as line_name, s.dimension,
                   m.quantity,
                   cast(m.cost_minor as bigint) as cost_minor,
                   s.retail_price_minor as price_minor,
                   k.name as pack,
                   coalesce(k.quantity, case when s.dimension = 'COUNT' then 1 end) as pack_quantity,
                   m.sold_quantity,
                   cast(m.sales_minor as bigint) as sales_minor,
                   cast(m.sold_cost_minor as bigint) as sold_cost_minor,
                   s.retail_price_minor is not null and m.quantity < coalesce(k.quantity, 1) as is_low
            from (select a.supply_id,
                         sum(a.quantity) as quantity,
                         sum(a.cost_minor) as cost_minor,
                         sum(a.sold_quantity) as sold_quantity,
                         sum(a.sales_minor) as sales_minor,
                         sum(a.sold_cost_minor) as sold_cost_minor
                  from (select id as supply_id, 0 as quantity, 0 as cost_minor, 0 as sold_quantity, 0 as sales_minor, 0 as sold_cost_minor
                        from supply
                        union all
                        select p.supply_id,
                               case when p.account = 'SHELF' then p.quantity else 0 end,
                               case when p.account = 'SHELF' then p.amount_minor else 0 end,
                               case when p.account = 'SHELF' and d.kind in ('SALE', 'REFUND') then -p.quantity else 0 end,
                               case when p.account in ('SALES', 'REFUNDS') then -p.amount_minor else 0 end,
                               case when p.account = 'COST_OF_RETAIL' then p.amount_minor else 0 end
                        from posting p
                        left join document d on d.id = p.document_id
                        where p.account in ('SHELF', 'SALES', 'REFUNDS', 'COST_OF_RETAIL') and p.doc_date <= :day
                          and case when p.supply_id is not null and p.piece_id is null then 1 else 0 end = 1) a
                  group by a.supply_id) m
            left join supply s on s.id = m.supply_id
            left join supply_line l on l.id = s.supply_line_id
            left join (select sp.supply_id, sp.name, sp.quantity,
                              row_number() over (partition by sp.supply_id order by sp.quantity, sp.name) as nth
                       from supply_pack sp) k on k.supply_id = s.id and k.nth = 1
            where (s.retail_price_minor is not null
                   and not exists (select 1 from bench_pot p where p.kept_as = s.id))
                or m.quantity <> 0 or m.cost_minor <> 0 or m.sold_quantity <> 0
            order by lower(l.name), lower(s.name), s.id""";

    private final JdbcClient jdbc;

    RetailList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Row> at(LocalDate day) {
        return jdbc.sql(ROWS).param("day", day).query(Row.class).list();
    }
}
