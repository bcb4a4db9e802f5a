package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.web.NotFound;

/** Another price of an offer from a day on, and taking it back. */
@Service
public class OfferPrices {

    private final SellingDocuments documents;

    OfferPrices(SellingDocuments documents) {
        this.documents = documents;
    }

    /**
     * Another price of an offer.
     *
     * @param before the price that was asked until now; where it is another one, somebody was quicker
     */
    public record Ask(UUID offer, Amount before, Amount price) {}

    /**
     * Asks other prices from a day on, all or none; the books follow once.
     *
     * @throws OptimisticLockingFailureException where an offer asks another price by now
     * @throws NotFound where there is no such offer, or it had not begun
     * @throws Refused where the day lies in a sealed year
     */
    @Transactional
    public void ask(LocalDate day, List<Ask> asks) {
        Map<UUID, Consumer<Offer>> steps = new LinkedHashMap<>();
        asks.forEach(ask -> steps.put(ask.offer(), stored -> ask(stored, day, ask)));
        documents.steps(Offer.class, day, steps);
    }

    private static void ask(Offer stored, LocalDate day, Ask ask) {
        Offer.Content content = stored.content();
        if (!content.lastPrice().equals(ask.before())) {
            throw new OptimisticLockingFailureException("Offer " + ask.offer() + " asks another price");
        }
        stored.rewrite(OfferChange.priced(content, day, ask.price()).orElseThrow(() -> unknown(ask.offer())));
    }

    /**
     * Takes back the price that is asked from a day on.
     *
     * @return whether there was one, and an earlier price to go back to
     * @throws NotFound where there is no such offer
     * @throws Refused where the day lies in a sealed year
     */
    @Transactional
    public boolean takeBack(UUID offer, LocalDate day) {
        Offer.Content content = content(offer);
        List<Offer.Price> prices = new ArrayList<>(content.prices());
        if (prices.size() < 2 || !last(content).validFrom().equals(day)) {
            return false;
        }
        prices.remove(prices.size() - 1);
        rewrite(offer, day, OfferChange.with(content, content.endedOn(), prices, content.pauses()));
        return true;
    }

    private void rewrite(UUID offer, LocalDate day, Offer.Content then) {
        long version = documents.read(Offer.class, offer, Offer::version).orElseThrow(() -> unknown(offer));
        documents.step(Offer.class, offer, version, day, stored -> stored.rewrite(then));
    }

    private Offer.Content content(UUID offer) {
        return documents.read(Offer.class, offer, Offer::content).orElseThrow(() -> unknown(offer));
    }

    private static Offer.Price last(Offer.Content content) {
        return content.prices().get(content.prices().size() - 1);
    }

    private static NotFound unknown(UUID offer) {
        return new NotFound("Offer " + offer);
    }
}
