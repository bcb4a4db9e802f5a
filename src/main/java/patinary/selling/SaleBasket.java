package patinary.selling;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;
import patinary.web.Ids;

/** Puts lines on the form of a sale and takes them off again. */
@Component
class SaleBasket {

    private final SellingDocuments documents;
    private final PieceFinder pieces;
    private final RetailShelf shelf;
    private final BundleLines bundles;
    private final CurrentShop shop;

    SaleBasket(
            SellingDocuments documents, PieceFinder pieces, RetailShelf shelf, BundleLines bundles, CurrentShop shop) {
        this.documents = documents;
        this.pieces = pieces;
        this.shelf = shelf;
        this.bundles = bundles;
        this.shop = shop;
    }

    /** Carries out a button that changes the lines: add-offer, add-piece, add-supply, add-bundle, remove-0. */
    void act(SaleForm form, String act) {
        remove(form, act);
        takeChosen(form);
    }

    /**
     * Puts on the form whatever is chosen, by whichever button it was sent: what she chose is not left out because she
     * did not tap the button beside it.
     *
     * @return whether that was anything
     */
    boolean takeChosen(SaleForm form) {
        int before = form.lines.size();
        Ids.read(form.addOffer).ifPresent(id -> addOffer(form, id));
        addPiece(form, form.addPiece);
        addSupply(form, form.addSupply);
        addBundle(form, form.addBundle);
        form.addOffer = "";
        form.addPiece = "";
        form.addSupply = "";
        form.addBundle = "";
        return form.lines.size() > before;
    }

    /** A line for everything the offer has, at the price asked now; its channel where none is chosen yet. */
    void addOffer(SaleForm form, UUID id) {
        documents.read(Offer.class, id, Offer::content).ifPresent(offer -> {
            form.lines.add(line(offer));
            if (form.channel.isBlank() && offer.channels().size() == 1) {
                form.channel = offer.channels().get(0).toString();
            }
        });
    }

    void addPiece(SaleForm form, String code) {
        if (!code.isBlank()) {
            SaleForm.Line line = new SaleForm.Line();
            line.codes = code.strip();
            form.lines.add(line);
        }
    }

    void addBundle(SaleForm form, String id) {
        Ids.read(id).flatMap(bundles::line).ifPresent(form.lines::add);
    }

    private void addSupply(SaleForm form, String id) {
        shelf.find(id).ifPresent(supply -> {
            SaleForm.Line line = new SaleForm.Line();
            line.supply = id;
            line.title = supply.name();
            line.quantity = "1";
            line.content = RetailShelf.usualPack(supply);
            line.price = supply.retailPrice() == null ? "" : shop.currency().plain(supply.retailPrice());
            form.lines.add(line);
        });
    }

    private static void remove(SaleForm form, String act) {
        for (int i = form.lines.size() - 1; i >= 0; i--) {
            if (act.equals("remove-" + i)) {
                form.lines.remove(i);
            }
        }
    }

    private SaleForm.Line line(Offer.Content offer) {
        SaleForm.Line line = new SaleForm.Line();
        line.title = offer.title();
        line.price = shop.currency().plain(offer.lastPrice());
        Map<UUID, BigDecimal> weights = offer.pieces().stream()
                .collect(Collectors.toMap(Offer.OfferedPiece::pieceId, Offer.OfferedPiece::weight));
        fillPieces(line, weights, pieces(weights.keySet()));
        return line;
    }

    Map<UUID, PieceRef> pieces(Collection<UUID> ids) {
        return pieces.byId(ids);
    }

    /** Codes in order, with their weights where they differ. */
    static void fillPieces(SaleForm.Line line, Map<UUID, BigDecimal> weights, Map<UUID, PieceRef> known) {
        List<PieceRef> refs = weights.keySet().stream()
                .flatMap(id -> Optional.ofNullable(known.get(id)).stream())
                .sorted(Comparator.comparing(PieceRef::code))
                .toList();
        line.codes = refs.stream().map(PieceRef::code).collect(Collectors.joining(" "));
        line.weights =
                Weights.write(refs.stream().map(ref -> weights.get(ref.id())).toList());
    }
}
