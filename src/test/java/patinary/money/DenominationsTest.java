package patinary.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Denominations.Denomination;
import patinary.money.Denominations.Kind;

/** Sources of the values are named in the file, from memory. */
class DenominationsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 2);

    private final Denominations known = Denominations.load();

    @Test
    void dollarsAreThoseInIssueLargestFirst() {
        assertThat(values("USD", DAY))
                .containsExactly(10_000L, 5_000L, 2_000L, 1_000L, 500L, 200L, 100L, 100L, 50L, 25L, 10L, 5L, 1L);
    }

    @Test
    void theLargestEuroNoteIsNoLongerIssued() {
        assertThat(values("EUR", LocalDate.of(2019, 4, 26))).startsWith(50_000L);
        assertThat(values("EUR", LocalDate.of(2019, 4, 27))).startsWith(20_000L);
    }

    @Test
    void theDollarIsANoteBeforeItIsACoin() {
        assertThat(known.on(DAY, ShopCurrency.ofCode("USD")))
                .filteredOn(one -> one.value().equals(Amount.of(100)))
                .extracting(Denomination::kind)
                .containsExactly(Kind.NOTE, Kind.COIN);
    }

    @Test
    void aCurrencyThatIsNotInTheFileHasNone() {
        assertThat(known.on(DAY, ShopCurrency.ofCode("JPY"))).isEmpty();
    }

    private List<Long> values(String currency, LocalDate day) {
        return known.on(day, ShopCurrency.ofCode(currency)).stream()
                .map(one -> one.value().minor())
                .toList();
    }
}
