package patinary.arrangements;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** Supplies received free, as docs/handbook/posting-rules-arrangements.md has them: a jar of 250 ml, 18.00 in a shop. */
class SupplyGiftTest {

    private static final UUID JAR = new UUID(3, 3);
    private static final BigDecimal CONTENT = BigDecimal.valueOf(250);

    @Test
    void aGiftCostsNothing() {
        assertThat(gift(false))
                .containsExactly(
                        new Move.SupplyIn(JAR, StockPlace.BENCH, CONTENT, Amount.ZERO, false),
                        new Move.Post(Account.OTHER_INCOME, Tags.category("in kind"), Amount.ZERO));
    }

    @Test
    void whatIsForWorkDoneIsIncomeAndItsCost() {
        assertThat(gift(true))
                .containsExactly(
                        new Move.SupplyIn(JAR, StockPlace.BENCH, CONTENT, Amount.of(1800), false),
                        new Move.Post(Account.OTHER_INCOME, Tags.category("in kind"), Amount.of(-1800)));
    }

    private static List<Move> gift(boolean forWork) {
        return new SupplyGift(
                        new UUID(1, 1),
                        LocalDate.of(2025, 3, 1),
                        "",
                        "An invented maker",
                        JAR,
                        CONTENT,
                        Amount.of(1800),
                        forWork)
                .moves();
    }
}
