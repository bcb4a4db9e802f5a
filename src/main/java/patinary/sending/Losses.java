package patinary.sending;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.spending.OtherIncome;
import patinary.web.NotFound;
import patinary.web.Page;
import patinary.web.Window;

/** What was lost or damaged in the mail, and what was claimed for it. */
@Repository
@Transactional
class Losses {

    /** The category of other income that a carrier's compensation is. */
    static final String COMPENSATION = "carrier compensation";

    /** What her form says. */
    record Facts(
            Loss.What what,
            LocalDate noticedOn,
            String words,
            @Nullable LocalDate claimedOn,
            @Nullable Amount claimed,
            String reference,
            @Nullable LocalDate refusedOn) {}

    /** What all claims come to: still open, paid, and refused. */
    record Sums(long open, long openMinor, long paid, long paidMinor, long refused, long refusedMinor) {}

    private static final String ROWS = """
            select m.id, m.sale_id, m.what, m.noticed_on, m.words, m.claimed_on, m.claimed_minor, m.reference, m.refused_on,
                   m.income_id, di.doc_date as paid_on, oi.amount_minor as paid_minor,
                   (select cast(coalesce(sum(r.shipping_minor + r.tax_minor
                           + coalesce((select sum(rl.amount_minor) from refund_line rl where rl.refund_id = r.id), 0)), 0) as bigint)
                    from refund r where r.sale_id = m.sale_id) as refund_minor,
                   s.buyer, s.order_reference, d.doc_date as sold_on, m.version
            from mail_loss m
            join sale s on s.id = m.sale_id
            join document d on d.id = s.id
            left join other_income oi on oi.id = m.income_id
            left join document di on di.id = m.income_id
            """;

    private final JdbcClient jdbc;
    private final Books books;

    Losses(JdbcClient jdbc, Books books) {
        this.jdbc = jdbc;
        this.books = books;
    }

    /** Open claims first, then what nobody claimed, then the rest; the oldest of each first. */
    @Transactional(readOnly = true)
    Page<Loss> page(Window window) {
        long total =
                jdbc.sql("select count(*) from mail_loss").query(Long.class).single();
        List<Loss> rows = jdbc.sql(ROWS + """
                        order by case when m.income_id is not null or m.refused_on is not null then 2
                                      when m.claimed_on is null then 1 else 0 end, m.noticed_on, m.id
                        offset :offset rows fetch next :size rows only""")
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Loss.class)
                .list();
        return Page.of(window, rows, total);
    }

    @Transactional(readOnly = true)
    Sums sums() {
        return jdbc.sql("""
                        select cast(coalesce(sum(case when c.state = 'OPEN' then 1 else 0 end), 0) as bigint) as open,
                               cast(coalesce(sum(case when c.state = 'OPEN' then c.claimed_minor else 0 end), 0) as bigint) as open_minor,
                               cast(coalesce(sum(case when c.state = 'PAID' then 1 else 0 end), 0) as bigint) as paid,
                               cast(coalesce(sum(case when c.state = 'PAID' then c.paid_minor else 0 end), 0) as bigint) as paid_minor,
                               cast(coalesce(sum(case when c.state = 'REFUSED' then 1 else 0 end), 0) as bigint) as refused,
                               cast(coalesce(sum(case when c.state = 'REFUSED' then c.claimed_minor else 0 end), 0) as bigint) as refused_minor
                        from (select case when m.income_id is not null then 'PAID' when m.refused_on is not null then 'REFUSED'
                                          when m.claimed_on is not null then 'OPEN' else 'NONE' end as state,
                                     m.claimed_minor, oi.amount_minor as paid_minor
                              from mail_loss m left join other_income oi on oi.id = m.income_id) c""").query(Sums.class).single();
    }

    @Transactional(readOnly = true)
    Optional<Loss> find(UUID id) {
        return jdbc.sql(ROWS + "where m.id = ?").param(id).query(Loss.class).optional();
    }

    @Transactional(readOnly = true)
    List<Loss> ofSale(UUID sale) {
        return jdbc.sql(ROWS + "where m.sale_id = ? order by m.noticed_on, m.id")
                .param(sale)
                .query(Loss.class)
                .list();
    }

    /** Notes a loss once for each id. */
    void add(UUID id, UUID sale, Facts facts) {
        if (find(id).isPresent()) {
            return;
        }
        jdbc.sql(
                        "insert into mail_loss (id, sale_id, what, noticed_on, words, claimed_on, claimed_minor, reference, refused_on)"
                                + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        id,
                        sale,
                        facts.what().name(),
                        facts.noticedOn(),
                        facts.words(),
                        facts.claimedOn(),
                        minor(facts.claimed()),
                        facts.reference(),
                        facts.refusedOn())
                .update();
    }

    /** @throws OptimisticLockingFailureException where somebody changed it since its form was drawn */
    void change(UUID id, long version, Facts facts) {
        int changed = jdbc.sql(
                        "update mail_loss set what = ?, noticed_on = ?, words = ?, claimed_on = ?, claimed_minor = ?,"
                                + " reference = ?, refused_on = ?, version = version + 1 where id = ? and version = ?")
                .params(
                        facts.what().name(),
                        facts.noticedOn(),
                        facts.words(),
                        facts.claimedOn(),
                        minor(facts.claimed()),
                        facts.reference(),
                        facts.refusedOn(),
                        id,
                        version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Loss " + id + " is stale");
        }
    }

    /**
     * Records what the carrier paid as other income, once for each loss.
     *
     * @throws patinary.ledger.Refused where the day lies in a sealed year
     */
    void paid(Loss loss, UUID document, LocalDate day, UUID place, Amount amount, String note) {
        books.hold();
        if (find(loss.id()).filter(now -> now.incomeId() == null).isEmpty()) {
            return;
        }
        books.record(new OtherIncome(document, day, note, COMPENSATION, "", place, amount));
        jdbc.sql("update mail_loss set income_id = ?, refused_on = null, version = version + 1 where id = ?")
                .params(document, loss.id())
                .update();
    }

    /** What was refunded or paid for it stays in the books. */
    void remove(UUID id) {
        if (jdbc.sql("delete from mail_loss where id = ?").param(id).update() == 0) {
            throw new NotFound("Loss " + id);
        }
    }

    private static @Nullable Long minor(@Nullable Amount amount) {
        return amount == null ? null : amount.minor();
    }
}
