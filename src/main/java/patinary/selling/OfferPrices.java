package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
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
     * Asks another price from a day on.
     *
     * @param before the price that was asked until now; where it is another one, somebody was quicker
     * @throws OptimisticLockingFailureException where the offer asks another price by now
     * @throws NotFound where there is no such offer, or it had not begun
     * @throws Refused where the day lies in a sealed year
     */
    @Transactional
    public void ask(UUID offer, LocalDate day, Amount before, Amount price) {
        Offer.Content content = content(offer);
        if (!last(content).price().equals(before)) {
            throw new OptimisticLockingFailureException("Offer " + offer + " asks another price");
        }
        rewrite(offer, day, OfferChange.priced(content, day, price).orElseThrow(() -> unknown(offer)));
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
