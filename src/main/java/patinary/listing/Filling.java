package patinary.listing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import patinary.measure.Dimension;
import patinary.supplies.QuantityFmt;
import patinary.web.Fmt;

/** What fills the blanks of a pattern for an offer. */
@Component
class Filling {

    private final Care care;
    private final Fmt fmt;
    private final QuantityFmt quantities;

    Filling(Care care, Fmt fmt, QuantityFmt quantities) {
        this.care = care;
        this.fmt = fmt;
        this.quantities = quantities;
    }

    Map<Blank, List<String>> of(OfferFacts offer) {
        Map<Blank, List<String>> known = new EnumMap<>(Blank.class);
        known.put(Blank.TITLE, List.of(offer.title()));
        known.put(Blank.PIECES, offer.each(OfferFacts.Piece::title));
        known.put(Blank.CODES, offer.each(OfferFacts.Piece::code));
        known.put(Blank.KIND, offer.each(OfferFacts.Piece::kind));
        known.put(Blank.STYLE, offer.each(OfferFacts.Piece::style));
        known.put(Blank.MATERIAL, offer.each(OfferFacts.Piece::material));
        known.put(Blank.SIZE, offer.named(OfferFacts.Piece::size));
        known.put(
                Blank.WEIGHT,
                offer.named(piece -> piece.weightG() == null ? null : quantities.say(piece.weightG(), Dimension.MASS)));
        known.put(Blank.FINISH, offer.finishes());
        known.put(
                Blank.SUPPLIES,
                offer.supplies().stream().map(OfferFacts.Used::name).distinct().toList());
        known.put(Blank.TAGS, offer.tags());
        known.put(Blank.PRICE, offer.priceMinor() == null ? List.of() : List.of(fmt.money(offer.priceMinor())));
        known.put(Blank.CARE, care.of(offer));
        return known;
    }
}
