package patinary.taxbasis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import patinary.money.Amount;
import patinary.taxbasis.TaxBasis.Income;
import patinary.taxbasis.TaxBasis.Supplies;

/** Over any years and any settings, each cent of profit is taxed once: whatever is moved out of a year is in another. */
class NothingTwiceOrNeverTest {

    private static final int FIRST = 2025;

    /** A year's profit by the books, and what differs at its end. */
    record Year(long book, List<Difference> end) {}

    @Provide
    Arbitrary<List<Year>> histories() {
        Arbitrary<Difference> difference = Combinators.combine(
                        Arbitraries.of(Reason.class),
                        Arbitraries.integers().between(1, 5),
                        Arbitraries.of("", "office", "meals"),
                        Arbitraries.longs().between(-100_000, 100_000))
                .as((reason, subject, category, amount) -> new Difference(
                        reason, category, Subject.thing("SALE", new UUID(0, subject), ""), Amount.of(amount)));
        return Combinators.combine(
                        Arbitraries.longs().between(-1_000_000, 1_000_000),
                        difference.list().ofMaxSize(12))
                .as(Year::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(8);
    }

    @Provide
    Arbitrary<TreeMap<Integer, TaxBasis>> settings() {
        Arbitrary<TaxBasis> basis = Combinators.combine(Arbitraries.of(Income.class), Arbitraries.of(Supplies.class))
                .as(TaxBasis::new);
        return Arbitraries.maps(Arbitraries.integers().between(FIRST - 2, FIRST + 7), basis)
                .map(TreeMap::new);
    }

    @Property
    void whatIsTaxedIsWhatWasEarnedAndWhatIsLeftToCome(
            @ForAll("histories") List<Year> history, @ForAll("settings") TreeMap<Integer, TaxBasis> set) {
        BasisByYear bases = new BasisByYear(set);
        List<Difference> before = List.of();
        long book = 0;
        long tax = 0;
        List<Adjustments> all = new ArrayList<>();
        for (int i = 0; i < history.size(); i++) {
            Year year = history.get(i);
            Adjustments one = Adjustments.of(before, year.end(), bases.before(FIRST + i, FIRST), bases.of(FIRST + i));
            book += year.book();
            tax += year.book() + one.profit().minor();
            before = year.end();
            all.add(one);
        }
        TaxBasis last = bases.of(FIRST + history.size() - 1);
        long leftToCome =
                before.stream().mapToLong(row -> row.under(last).minor()).sum();
        assertThat(tax).isEqualTo(book + leftToCome);
        for (Adjustments one : all) {
            assertThat(one.opening().plus(one.within())).isEqualTo(one.profit());
            assertThat(one.rows())
                    .allSatisfy(row -> assertThat(row.sides().stream()
                                    .map(Adjustment.Side::amount)
                                    .collect(Amount.sum()))
                            .isEqualTo(Amount.ZERO));
            assertThat(one.groups().stream().map(Adjustments.Group::profit).collect(Amount.sum()))
                    .isEqualTo(one.profit());
        }
        for (int i = 1; i < all.size(); i++) {
            assertThat(all.get(i).before())
                    .as("a year begins where the last one ended")
                    .isEqualTo(all.get(i - 1).after());
        }
    }

    @Property
    void whereTheWayOfCountingStaysNothingIsAdjustedAtTheOpening(
            @ForAll("histories") List<Year> history, @ForAll Income income, @ForAll Supplies supplies) {
        TaxBasis basis = new TaxBasis(income, supplies);
        List<Difference> before = List.of();
        for (Year year : history) {
            assertThat(Adjustments.of(before, year.end(), basis, basis).opening())
                    .isEqualTo(Amount.ZERO);
            before = year.end();
        }
    }
}
