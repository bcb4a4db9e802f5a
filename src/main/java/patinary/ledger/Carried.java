package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What there is of a supply at the beginning of a day, carried forward so that a later change need not follow the supply from its
 * first move. Only of a supply that is tied to no pot: what was used of it is done, but for what waits for a receipt or for a count.
 *
 * @param day nothing of this day itself is in it
 * @param places what there is at each place where the supply was seen
 */
record Carried(UUID supply, LocalDate day, List<AtPlace> places) {

    /**
     * How often and how much.
     *
     * @param every after how many moves of a supply, at least one
     * @param uses so many uses since the last count at most; more are left out
     */
    record Rule(int every, int uses) {}

    /** Whether a count is told of all that was used since the last one, at every place. */
    boolean isWhole() {
        return places.stream().allMatch(AtPlace::whole);
    }

    /** Whether the uses since the last count at a place were left out. */
    boolean leavesOut(StockPlace place) {
        return places.stream().anyMatch(at -> at.place() == place && !at.whole());
    }

    /**
     * One place.
     *
     * @param lots what is left, first the next to go out
     * @param latest what was last bought, whole
     * @param uses those that something may still happen to, each once
     * @param waiting the places, among these, of those that wait for a receipt
     * @param sinceCount the places of those that the next count will settle
     * @param whole whether sinceCount holds all of them; where not, none
     */
    record AtPlace(
            StockPlace place,
            List<LotLeft> lots,
            @Nullable LotLeft latest,
            List<OpenUse> uses,
            List<Integer> waiting,
            List<Integer> sinceCount,
            boolean whole) {

        static AtPlace of(StockPlace place, Stock stock, List<Use> waiting, List<Use> sinceCount, boolean whole) {
            List<Use> uses = Stream.concat(waiting.stream(), sinceCount.stream())
                    .distinct()
                    .toList();
            return new AtPlace(
                    place,
                    stock.carried(),
                    stock.carriedLatest(),
                    uses.stream().map(Use::carried).toList(),
                    waiting.stream().map(uses::indexOf).toList(),
                    sinceCount.stream().map(uses::indexOf).toList(),
                    whole);
        }
    }

    /** What a {@link Lot} is made of. */
    record LotLeft(BigDecimal quantity, Amount cost, boolean estimated, BigDecimal taken) {}

    /** What a {@link Use} is made of. */
    record OpenUse(
            DocumentRef document,
            Move.SupplyOut move,
            BigDecimal costed,
            BigDecimal waiting,
            Amount cost,
            boolean priceRemembered,
            Amount charged,
            BigDecimal more) {}
}
