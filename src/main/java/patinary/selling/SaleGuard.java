package patinary.selling;

import java.time.LocalDate;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;

/** Keeps a sale and what hangs on it from contradicting each other. */
@Component
class SaleGuard {

    private static final String FOLLOWERS = """
            from document d
            join (select id, sale_id from refund
                  union all select id, sale_id from payment
                  union all select id, sale_id from postage
                  union all select id, receipt_id from bill_paid) f on f.id = d.id
            where f.sale_id = :id""";

    private final JdbcClient jdbc;

    SaleGuard(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many refunds, payments, postages, and payments to owners of its pieces belong to a sale. */
    long followers(UUID sale) {
        return jdbc.sql("select count(*) " + FOLLOWERS)
                .param("id", sale)
                .query(Long.class)
                .single();
    }

    /** A sale is not dated after what happened to it. */
    void check(SaleContent sale, UUID id, Errors errors) {
        jdbc.sql("select min(d.doc_date) as first_date " + FOLLOWERS + " and d.kind in ('REFUND', 'PAYMENT')")
                .param("id", id)
                .query((row, number) -> java.util.Optional.ofNullable(row.getObject("first_date", LocalDate.class)))
                .single()
                .filter(first -> first.isBefore(sale.date()))
                .ifPresent(first -> errors.rejectValue(
                        "date", "selling.error.after-follower", new Object[] {first.toString()}, null));
    }
}
