package patinary.selling;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.Account;
import patinary.money.Amount;

/** What the shop holds for buyers: deposits paid ahead, credit given; and what they owe. */
@Component
class BuyerMoney {

    /** Deposits paid ahead, and credit given. */
    record Held(Amount deposits, Amount credits) {}

    private record OnAccount(String account, long amountMinor) {}

    private final JdbcClient jdbc;

    BuyerMoney(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is held on an account of buyers, without what one document itself does to it. */
    Amount held(Account account, UUID without) {
        return Amount.of(-jdbc.sql(
                        "select coalesce(sum(amount_minor), 0) from posting where account = :account and document_id <> :own")
                .param("account", account.name())
                .param("own", without)
                .query(Long.class)
                .single());
    }

    /** What is held altogether. */
    Held held() {
        Map<String, Amount> held = jdbc.sql("""
                        select account, cast(-sum(amount_minor) as bigint) as amount_minor
                        from posting
                        where account in ('CUSTOMER_DEPOSITS', 'STORE_CREDIT_GIVEN')
                        group by account""").query(OnAccount.class).list().stream()
                .collect(Collectors.toMap(OnAccount::account, row -> Amount.of(row.amountMinor())));
        return new Held(
                held.getOrDefault(Account.CUSTOMER_DEPOSITS.name(), Amount.ZERO),
                held.getOrDefault(Account.STORE_CREDIT_GIVEN.name(), Amount.ZERO));
    }

    /** The opening, with which arose what was owed on the first day. */
    Optional<UUID> opening() {
        return jdbc.sql("select id from opening").query(UUID.class).optional();
    }

    /** What is still owed for a sale, or the opening. */
    Amount owed(UUID sale) {
        return Amount.of(jdbc.sql("select amount_minor from owed_to_shop where sale_id = ?")
                .param(sale)
                .query(Long.class)
                .optional()
                .orElse(0L));
    }
}
