package patinary.arrangements;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** What is held for each buyer, and what came of other income: sums of postings. */
@Repository
@Transactional(readOnly = true)
class Held {

    /** What one buyer has left; names that differ by capitals or spaces alone are one. */
    record Buyer(String account, String buyer, long givenMinor, long usedMinor) {

        public long leftMinor() {
            return givenMinor - usedMinor;
        }
    }

    /** One time that something was given, or used. */
    record Step(
            String account,
            String buyer,
            LocalDate docDate,
            String kind,
            @Nullable UUID saleId,
            long amountMinor) {}

    /** Other income of one category in one year. */
    record Income(int inYear, String category, long grossMinor, long feeMinor, long times) {

        public long netMinor() {
            return grossMinor - feeMinor;
        }
    }

    private final JdbcClient jdbc;

    Held(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Buyer> buyers() {
        return jdbc.sql("""
                        select account, min(trim(buyer)) as buyer,
                               cast(sum(case when amount_minor > 0 then amount_minor else 0 end) as bigint) as given_minor,
                               cast(sum(case when amount_minor < 0 then -amount_minor else 0 end) as bigint) as used_minor
                        from buyer_held
                        group by account, lower(trim(buyer))
                        order by account, lower(trim(buyer))""").query(Buyer.class).list();
    }

    List<Step> steps(String buyer) {
        return jdbc.sql("""
                        select account, buyer, doc_date, kind, sale_id, amount_minor
                        from buyer_held
                        where lower(trim(buyer)) = lower(trim(:buyer))
                        order by account, doc_date, document_id""").param("buyer", buyer).query(Step.class).list();
    }

    /** The latest year first. */
    List<Income> income() {
        return jdbc.sql("""
                        select i.in_year, i.category, cast(sum(i.gross_minor) as bigint) as gross_minor,
                               cast(sum(i.fee_minor) as bigint) as fee_minor, count(distinct i.document_id) as times
                        from (select cast(extract(year from doc_date) as integer) as in_year, category, gross_minor, fee_minor,
                                     document_id
                              from income_category) i
                        group by i.in_year, i.category
                        order by i.in_year desc, i.category""").query(Income.class).list();
    }
}
