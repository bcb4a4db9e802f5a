package patinary.selling;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.shop.CurrentShop;

/** The sales of today, for the list below the stall's goods. */
@Component
class StallDay {

    /** One sale; what was paid with it, in minor units. */
    record Sold(UUID saleId, String channel, long paidMinor) {}

    /** All of them, the latest first, with what was sold in one text each. */
    record Today(List<Sold> sales, Map<UUID, String> titles) {

        public Amount total() {
            return sales.stream().map(sale -> Amount.of(sale.paidMinor())).collect(Amount.sum());
        }
    }

    private final JdbcClient jdbc;
    private final SaleList sales;
    private final CurrentShop shop;

    StallDay(JdbcClient jdbc, SaleList sales, CurrentShop shop) {
        this.jdbc = jdbc;
        this.sales = sales;
        this.shop = shop;
    }

    Today today() {
        List<Sold> sold =
                jdbc.sql("""
                        select s.id as sale_id, c.name as channel, cast(coalesce((
                                   select sum(sp.amount_minor) from sale_payment sp where sp.sale_id = s.id), 0) as bigint)
                                   as paid_minor
                        from sale s
                        join document d on d.id = s.id
                        join channel c on c.id = s.channel_id
                        where d.doc_date = :today
                        order by d.recorded_at desc, s.id""").param("today", shop.today()).query(Sold.class).list();
        return new Today(sold, sales.titles(sold.stream().map(Sold::saleId).toList()));
    }
}
