package patinary.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A table of kept figures. Its definition is the view of the same name with {@code _anew} behind it, which works out the rows of
 * the touched ids. They stand in the order in which they rest on each other.
 */
enum KeptFigure {
    DOCUMENT_PIECE(Touched.DOCUMENT),
    DOCUMENT_SALE(Touched.DOCUMENT),
    DOCUMENT_STOCK(Touched.DOCUMENT),
    DOCUMENT_PROFIT(Touched.DOCUMENT),
    SUPPLY_STOCK(Touched.SUPPLY),
    SALE_PART(Touched.SALE),
    OFFER_STATE(Touched.OFFER),
    PIECE_STATE(Touched.PIECE),
    PIECE_FIGURES(Touched.PIECE),
    PIECE_STOCK(Touched.PIECE),
    PIECE_LINE(Touched.PIECE);

    private final Touched by;

    KeptFigure(Touched by) {
        this.by = by;
    }

    /** Those that are renewed by the ids of one kind, in the order in which they rest on each other. */
    static List<KeptFigure> of(Touched by) {
        return Arrays.stream(values()).filter(figure -> figure.by == by).toList();
    }

    /** By whose ids it is renewed. */
    Touched by() {
        return by;
    }

    String table() {
        return name().toLowerCase(Locale.ROOT);
    }

    String definition() {
        return table() + "_anew";
    }
}
