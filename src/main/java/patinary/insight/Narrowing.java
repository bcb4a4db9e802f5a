package patinary.insight;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Readings;

/**
 * The pieces that a page looks at: of one group, or of two groups at once, or all.
 *
 * @param chosen the groups, at most two
 * @param pieces those that belong to each of them; null for the whole shop
 * @param choices what may be chosen
 * @param bands the three price bands of the whole shop where one of them is chosen, or null
 */
record Narrowing(
        List<Only> chosen,
        @Nullable Set<UUID> pieces,
        List<Only> choices,
        @Nullable PriceBands bands) {

    static final Narrowing WHOLE = new Narrowing(List.of(), null, List.of(), null);

    boolean has(UUID piece) {
        return pieces == null || pieces.contains(piece);
    }

    public boolean isWhole() {
        return pieces == null;
    }

    /** As it stands in an address; empty for none. */
    public String only() {
        return word(0);
    }

    public String also() {
        return word(1);
    }

    private String word(int which) {
        return which < chosen.size() ? chosen.get(which).word() : "";
    }

    /**
     * What is reckoned of these pieces, kept. Of the whole shop it is read ahead after a change too; which pieces belong to a group may
     * be others then.
     */
    <T> T kept(Readings readings, Object what, Function<Narrowing, T> reckoning) {
        return isWhole()
                ? readings.ahead(what, () -> reckoning.apply(WHOLE))
                : readings.of(what, () -> reckoning.apply(this));
    }

    MoveFacts of(MoveFacts facts) {
        return pieces == null
                ? facts
                : new MoveFacts(
                        facts.found().entrySet().stream()
                                .filter(found -> has(found.getKey()))
                                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                        facts.channels(),
                        of(facts.offers()));
    }

    OfferFacts of(OfferFacts facts) {
        return pieces == null
                ? facts
                : new OfferFacts(
                        facts.spells().stream()
                                .filter(spell -> has(spell.piece()))
                                .toList(),
                        facts.pauses(),
                        facts.sold().stream().filter(sold -> has(sold.piece())).toList());
    }

    MoneyFacts of(MoneyFacts facts) {
        return pieces == null
                ? facts
                : new MoneyFacts(
                        facts.sales().stream().filter(sale -> has(sale.piece())).toList(),
                        facts.stock().stream().filter(one -> has(one.piece())).toList(),
                        facts.minutes());
    }

    List<Round> of(List<Round> rounds) {
        return pieces == null
                ? rounds
                : rounds.stream().filter(round -> has(round.piece())).toList();
    }
}
