package patinary.salestax;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** Reads what the report of sales tax is made of, and keeps which returns were sent in. */
@Repository
@Transactional
class TaxReports {

    private record Filed(UUID taxPlaceId, LocalDate filedOn) {}

    private final JdbcClient jdbc;

    TaxReports(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public TaxReport of(Period period) {
        List<TaxReport.Before> before = jdbc.sql(
                        "select tax_place_id, cast(sum(due_minor) as bigint) as due_minor from sales_tax_row"
                                + " where doc_date < ? group by tax_place_id")
                .param(period.first())
                .query(TaxReport.Before.class)
                .list();
        return TaxReport.of(period, rows(period), before, settlements());
    }

    /** The documents of a period, in order. */
    @Transactional(readOnly = true)
    public List<TaxRow> rows(Period period) {
        return jdbc.sql("select * from sales_tax_row where doc_date between ? and ?"
                        + " order by doc_date, cast(document_id as varchar(36))")
                .params(period.first(), period.last())
                .query(TaxRow.class)
                .list();
    }

    /** Payments that say which place and days they settle. */
    @Transactional(readOnly = true)
    public List<TaxReport.Settlement> settlements() {
        return jdbc.sql("""
                        select id as document_id, tax_place_id, covers_from, covers_to,
                               amount_minor + coalesce(allowance_minor, 0) as settled_minor
                        from sales_tax_paid
                        where tax_place_id is not null and covers_from is not null
                        order by covers_from, id""").query(TaxReport.Settlement.class).list();
    }

    /** What the account of sales tax due says at the end of a day. */
    @Transactional(readOnly = true)
    public Amount account(LocalDate day) {
        return Amount.of(-jdbc.sql("select coalesce(sum(amount_minor), 0) from posting"
                        + " where account = 'SALES_TAX_DUE' and doc_date <= ?")
                .param(day)
                .query(Long.class)
                .single());
    }

    /** The places whose return for exactly this period was sent in, and when. */
    @Transactional(readOnly = true)
    public Map<UUID, LocalDate> filed(Period period) {
        return jdbc
                .sql("select tax_place_id, filed_on from sales_tax_filed where covers_from = ? and covers_to = ?")
                .params(period.first(), period.last())
                .query(Filed.class)
                .list()
                .stream()
                .collect(Collectors.toMap(Filed::taxPlaceId, Filed::filedOn));
    }

    void file(UUID place, Period period, LocalDate day) {
        unfile(place, period);
        jdbc.sql("insert into sales_tax_filed (tax_place_id, covers_from, covers_to, filed_on)"
                        + " select id, cast(? as date), cast(? as date), cast(? as date) from tax_place where id = ?")
                .params(period.first(), period.last(), day, place)
                .update();
    }

    void unfile(UUID place, Period period) {
        jdbc.sql("delete from sales_tax_filed where tax_place_id = ? and covers_from = ? and covers_to = ?")
                .params(place, period.first(), period.last())
                .update();
    }
}
