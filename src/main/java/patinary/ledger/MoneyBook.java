package patinary.ledger;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import patinary.money.Amount;

/** What each money place holds by the books while the documents are replayed, and what a count says it holds. */
final class MoneyBook {

    /** The category under which the rounding account keeps what a count found short or over. */
    static final String SHORT_OR_OVER = "cash_short_or_over";

    private final Map<UUID, Amount> held = new HashMap<>();
    private final Journal journal;

    MoneyBook(Journal journal) {
        this.journal = journal;
    }

    /** So much is at a place by what was posted before. */
    void hold(UUID place, Amount amount) {
        held.put(place, amount);
    }

    void follow(Move.Post post) {
        UUID place = post.tags().place();
        if (post.account() == Account.MONEY && place != null) {
            held.merge(place, post.amount(), Amount::plus);
        }
    }

    /** From here on the place holds what was counted; the difference has no other explanation than the count itself. */
    void count(Move.MoneyCounted counted) {
        Amount before = held.getOrDefault(counted.place(), Amount.ZERO);
        Amount over = counted.amount().minus(before);
        journal.post(Account.MONEY, Tags.place(counted.place()), over);
        journal.post(Account.ROUNDING, Tags.category(SHORT_OR_OVER), over.negated());
        held.put(counted.place(), counted.amount());
    }
}
