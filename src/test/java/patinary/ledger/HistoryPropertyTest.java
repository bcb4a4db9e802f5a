package patinary.ledger;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * What must hold whatever happens in a shop: 10,000 random histories with everything that {@link RandomHistory} knows, each
 * looked at whole and by both costing methods. {@code RandomHistoryTest} shows that awkward things are among them.
 */
class HistoryPropertyTest {

    private static final int HISTORIES = 10_000;

    @Provide
    Arbitrary<RandomHistory> histories() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.integers().between(5, 40))
                .as(RandomHistory::of);
    }

    @Property(tries = HISTORIES)
    void theBooksHold(@ForAll("histories") RandomHistory history, @ForAll long typing) {
        for (StockMethod method : StockMethod.values()) {
            HistoryCheck check = new HistoryCheck(history, method);
            check.everyDocumentAddsToZero();
            check.stockAgreesToTheCentAtEveryDate();
            check.sharesAddToWhatIsShared();
            check.eachSupplyAndPieceAgreesWithItsPostings();
            check.countsAreBelieved();
            check.orderOfTypingPlaysNoPart(typing);
            check.nothingIsLostOrTwice();
        }
    }
}
