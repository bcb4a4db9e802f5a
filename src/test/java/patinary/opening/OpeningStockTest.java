package patinary.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.StockPlace;
import patinary.money.Amount;

/** Worked by hand: pieces 12.00 + guess 5.00, bench 8.40, retail shelf 30.00; last year's records said 60.00. */
class OpeningStockTest {

    @Test
    void holdsTheSumAgainstLastYearsClosingTotal() {
        OpeningStock stock = OpeningStock.of(content(Amount.of(6000)));

        assertThat(stock.pieces()).isEqualTo(Amount.of(1700));
        assertThat(stock.bench()).isEqualTo(Amount.of(840));
        assertThat(stock.shelf()).isEqualTo(Amount.of(3000));
        assertThat(stock.total()).isEqualTo(Amount.of(5540));
        assertThat(stock.difference()).isEqualTo(Amount.of(-460));
        assertThat(stock.estimated()).isEqualTo(Amount.of(1340));
        assertThat(stock.unknown()).isEqualTo(1);
    }

    @Test
    void hasNoDifferenceWhereNoTotalWasTyped() {
        assertThat(OpeningStock.of(content(null)).difference()).isNull();
    }

    private static Opening.Content content(@org.jspecify.annotations.Nullable Amount lastClosing) {
        return new Opening.Content(
                LocalDate.of(2025, 1, 1),
                "",
                null,
                lastClosing,
                List.of(
                        new Opening.OpeningPiece(UUID.randomUUID(), Amount.of(1200), true),
                        new Opening.OpeningPiece(UUID.randomUUID(), Amount.of(500), false)),
                List.of(supply(StockPlace.BENCH, 840, true), supply(StockPlace.SHELF, 3000, false)),
                List.of());
    }

    private static Opening.OpeningSupply supply(StockPlace place, long cost, boolean about) {
        return new Opening.OpeningSupply(1, UUID.randomUUID(), place, BigDecimal.TEN, Amount.of(cost), about);
    }
}
