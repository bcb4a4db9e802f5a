package patinary.supplies;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;

/** Her bundles: kept, found, and what is known of their parts. */
@Service
@Transactional
public class BundleBook {

    /** A bundle with its id. */
    public record Kept(UUID id, long version, boolean removed, Bundle.Facts facts) {}

    private final Bundles bundles;
    private final RetailList shelf;
    private final CurrentShop shop;

    BundleBook(Bundles bundles, RetailList shelf, CurrentShop shop) {
        this.bundles = bundles;
        this.shelf = shelf;
        this.shop = shop;
    }

    /** All that are sold, by name. */
    @Transactional(readOnly = true)
    public List<Kept> all() {
        return bundles.findAllByRemovedFalseOrderByName().stream()
                .map(BundleBook::kept)
                .toList();
    }

    /** One, even where it is sold no more. */
    @Transactional(readOnly = true)
    public Optional<Kept> find(UUID id) {
        return bundles.findById(id).map(BundleBook::kept);
    }

    /** What is known today of the parts, in order, to share a price by. */
    @Transactional(readOnly = true)
    public List<BundleShares.Known> known(List<Bundle.Part> parts) {
        return known(parts, onShelf(shop.today()));
    }

    static List<BundleShares.Known> known(List<Bundle.Part> parts, Map<UUID, RetailList.Row> shelf) {
        return parts.stream()
                .map(part -> {
                    RetailList.Row row = shelf.get(part.supplyId());
                    return row == null
                            ? new BundleShares.Known(null, null)
                            : new BundleShares.Known(row.askedFor(part.quantity()), row.costOf(part.quantity()));
                })
                .toList();
    }

    @Transactional(readOnly = true)
    Map<UUID, RetailList.Row> onShelf(LocalDate day) {
        return shelf.at(day).stream().collect(Collectors.toMap(RetailList.Row::id, Function.identity()));
    }

    @Transactional(readOnly = true)
    boolean isNameTaken(String name, UUID except) {
        return all().stream()
                .anyMatch(kept ->
                        kept.facts().name().equalsIgnoreCase(name) && !kept.id().equals(except));
    }

    /** Stores a new bundle; a form that is sent twice is one bundle. */
    void add(UUID id, Bundle.Facts facts) {
        if (bundles.findById(id).isEmpty()) {
            bundles.save(new Bundle(id, facts));
        }
    }

    /** @throws OptimisticLockingFailureException where it was changed, or removed, since the form was drawn */
    void change(UUID id, long version, Bundle.Facts facts) {
        bundles.findById(id)
                .filter(bundle -> bundle.version() == version && !bundle.removed())
                .orElseThrow(() -> new OptimisticLockingFailureException("Bundle " + id + " is stale"))
                .rewrite(facts);
    }

    void remove(UUID id) {
        bundles.findById(id).ifPresent(Bundle::remove);
    }

    private static Kept kept(Bundle bundle) {
        return new Kept(bundle.id(), bundle.version(), bundle.removed(), bundle.facts());
    }
}
