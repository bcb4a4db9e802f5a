package patinary.sending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.Trail;
import patinary.money.Amount;
import patinary.selling.Postage;
import patinary.selling.Sale;
import patinary.shop.CurrentShop;
import patinary.web.NotFound;

/** Marks sales as packed and sent, and keeps how they go. */
@Repository
@Transactional
class Sendings {

    /** What her form says of a parcel. */
    record Facts(
            boolean pickedUp,
            String sentFrom,
            String destination,
            @Nullable BigDecimal grams,
            String size,
            @Nullable UUID service,
            String tracking) {}

    private final JdbcClient jdbc;
    private final Books books;
    private final CurrentShop shop;
    private final Trail trail;

    Sendings(JdbcClient jdbc, Books books, CurrentShop shop, Trail trail) {
        this.jdbc = jdbc;
        this.books = books;
        this.shop = shop;
        this.trail = trail;
    }

    /**
     * Keeps how a sale goes.
     *
     * @param version of the row that the form was drawn from
     * @throws OptimisticLockingFailureException where somebody changed it since
     */
    void keep(UUID sale, long version, Facts facts) {
        begin(sale);
        int changed = jdbc.sql("""
                        update sending set picked_up = :pickedUp, sent_from = :sentFrom, destination = :destination,
                               weight_g = :grams, size = :size, service_id = :service, tracking = :tracking, version = version + 1
                        where sale_id = :sale and version = :version""")
                .param("pickedUp", facts.pickedUp())
                .param("sentFrom", facts.sentFrom())
                .param("destination", facts.destination())
                .param("grams", facts.grams())
                .param("size", facts.size())
                .param("service", facts.service())
                .param("tracking", facts.tracking())
                .param("sale", sale)
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Sending of " + sale + " is stale");
        }
    }

    /** @param packed whether it is packed; it is packed today */
    void packed(UUID sale, boolean packed) {
        begin(sale);
        jdbc.sql("update sending set packed_on = ? where sale_id = ?")
                .params(packed ? shop.today() : null, sale)
                .update();
    }

    /**
     * Marks a sale as sent, or as handed over, and as packed where it was not; or takes the mark back.
     *
     * @param day null where it was not sent after all
     * @throws patinary.ledger.Refused where the day lies in a sealed year
     */
    void sent(UUID sale, @Nullable LocalDate day) {
        Sale sold = books.find(Sale.class, sale).orElseThrow(() -> new NotFound("Sale " + sale));
        sold.posted(day);
        books.continued(sold, day == null ? shop.today() : day);
        begin(sale);
        if (day != null) {
            jdbc.sql("update sending set packed_on = ? where sale_id = ? and packed_on is null")
                    .params(day, sale)
                    .update();
        }
    }

    /**
     * Records what a carrier took for a sale, once for each id.
     *
     * @throws patinary.ledger.Refused where it cannot be true beside the others
     */
    void paid(UUID id, UUID sale, UUID place, String note, Amount carriage) {
        if (books.find(Postage.class, id).isEmpty()) {
            books.record(new Postage(id, shop.today(), note, sale, place, carriage, Amount.ZERO, false));
        }
    }

    private void begin(UUID sale) {
        books.hold();
        trail.thing("sale", sale);
        jdbc.sql("""
                        insert into sending (sale_id, picked_up, packed_on, destination, size, weight_g, service_id, tracking)
                        select s.id, false, null, '', '', null, null, '' from sale s
                        where s.id = :sale and not exists (select 1 from sending g where g.sale_id = s.id)""").param("sale", sale).update();
    }
}
