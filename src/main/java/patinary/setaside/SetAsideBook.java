package patinary.setaside;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.Percent;

/** Keeps her percentages of each year, and what she noted as paid. */
@Repository
@Transactional
class SetAsideBook {

    /** Her percentages of a year. */
    record Own(int taxYear, Percent incomePercent, Percent statePercent, long version) {}

    private static final String PAYMENTS = "select id, tax_year, paid_on, amount_minor, note from tax_payment";

    private final JdbcClient jdbc;
    private final Books books;

    SetAsideBook(JdbcClient jdbc, Books books) {
        this.jdbc = jdbc;
        this.books = books;
    }

    @Transactional(readOnly = true)
    Optional<Own> own(int year) {
        return jdbc.sql(
                        "select tax_year, income_percent, state_percent, version from set_aside_year where tax_year = ?")
                .param(year)
                .query((row, number) -> new Own(
                        row.getInt("tax_year"),
                        new Percent(row.getBigDecimal("income_percent")),
                        new Percent(row.getBigDecimal("state_percent")),
                        row.getLong("version")))
                .optional();
    }

    /** @throws OptimisticLockingFailureException where they changed after the form was drawn; -1 where there were none */
    void keep(Own own) {
        books.settingsChange();
        if (own(own.taxYear()).map(Own::version).orElse(-1L) != own.version()) {
            throw new OptimisticLockingFailureException("The percentages of " + own.taxYear() + " changed in between");
        }
        jdbc.sql("delete from set_aside_year where tax_year = ?")
                .param(own.taxYear())
                .update();
        jdbc.sql("insert into set_aside_year (tax_year, income_percent, state_percent, version) values (?, ?, ?, ?)")
                .params(
                        own.taxYear(),
                        own.incomePercent().value(),
                        own.statePercent().value(),
                        own.version() + 1)
                .update();
    }

    @Transactional(readOnly = true)
    List<TaxPayment> paid(int year) {
        return jdbc.sql(PAYMENTS + " where tax_year = ? order by paid_on, id")
                .param(year)
                .query(TaxPayment.class)
                .list();
    }

    /** Notes a payment; one sent twice is noted once. */
    void note(TaxPayment payment) {
        boolean known = jdbc.sql("select count(*) from tax_payment where id = ?")
                        .param(payment.id())
                        .query(Long.class)
                        .single()
                > 0;
        if (!known) {
            jdbc.sql("insert into tax_payment (id, tax_year, paid_on, amount_minor, note, version)"
                            + " values (?, ?, ?, ?, ?, 0)")
                    .params(payment.id(), payment.taxYear(), payment.paidOn(), payment.amountMinor(), payment.note())
                    .update();
        }
    }

    void remove(int year, UUID id) {
        jdbc.sql("delete from tax_payment where id = ? and tax_year = ?")
                .params(id, year)
                .update();
    }
}
