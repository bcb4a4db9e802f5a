package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.web.NotFound;

/** Offers that are recorded or changed several at once: of like pieces, and of the parts of a set. */
@Service
@Transactional
class OfferGroups {

    private final SellingDocuments documents;
    private final Books books;
    private final OfferList offers;

    OfferGroups(SellingDocuments documents, Books books, OfferList offers) {
        this.documents = documents;
        this.books = books;
        this.offers = offers;
    }

    /**
     * Puts up each piece by itself; the same form sent twice records them once.
     *
     * @param like the offer whose group they join, or null
     * @throws patinary.ledger.Refused where one of them cannot be true beside the others
     */
    void record(UUID id, Offer.Content typed, @Nullable UUID like) {
        if (books.find(Offer.class, id).isPresent()) {
            return;
        }
        List<Offer> several = new ArrayList<>();
        UUID group = like == null ? null : groupOf(like);
        Alike.apart(id, typed, group).forEach(one -> several.add(new Offer(one.id(), one.content())));
        books.recordAll(several);
    }

    /** The group of an offer; one that stood alone becomes the first of a group. */
    private UUID groupOf(UUID offer) {
        Offer first = books.find(Offer.class, offer).orElseThrow(() -> new NotFound("Offer " + offer));
        UUID group = first.content().alikeId();
        if (group != null) {
            return group;
        }
        first.joins(offer);
        return offer;
    }

    /**
     * Takes one step of an offer, and of the others of its group that are not sold and can take it.
     *
     * @param version the version of the offer that the step was chosen on
     * @param others whether the others take it too
     * @return false where the offer itself cannot take the step; then nothing is changed
     */
    boolean step(
            UUID id,
            long version,
            LocalDate day,
            boolean others,
            Function<Offer.Content, Optional<Offer.Content>> step) {
        Map<UUID, Consumer<Offer>> steps = new LinkedHashMap<>();
        if (!add(steps, id, step)) {
            return false;
        }
        if (documents.read(Offer.class, id, Offer::version).orElseThrow() != version) {
            throw new OptimisticLockingFailureException("Offer " + id + " is stale");
        }
        if (others) {
            offers.alike(id).stream()
                    .filter(row -> !row.state().equals("SOLD"))
                    .forEach(row -> add(steps, row.offerId(), step));
        }
        documents.steps(Offer.class, day, steps);
        return true;
    }

    private boolean add(
            Map<UUID, Consumer<Offer>> steps, UUID id, Function<Offer.Content, Optional<Offer.Content>> step) {
        Offer.Content now =
                documents.read(Offer.class, id, Offer::content).orElseThrow(() -> new NotFound("Offer " + id));
        Optional<Offer.Content> then = step.apply(now);
        then.ifPresent(content -> steps.put(id, offer -> offer.rewrite(content)));
        return then.isPresent();
    }

    /**
     * Ends a set and puts its parts up alone, all or nothing.
     *
     * @throws patinary.ledger.Refused where the day lies in a sealed year
     */
    void split(UUID id, long version, LocalDate day, List<SetSplit.Part> parts) {
        Offer.Content set =
                documents.read(Offer.class, id, Offer::content).orElseThrow(() -> new NotFound("Offer " + id));
        LocalDate last = SetSplit.lastDay(set, day);
        step(id, version, day, false, content -> OfferChange.ended(content, last));
        List<Offer> alone = SetSplit.alone(set, day, parts).stream()
                .map(content -> new Offer(UUID.randomUUID(), content))
                .toList();
        books.recordAll(alone);
    }
}
