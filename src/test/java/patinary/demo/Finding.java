package patinary.demo;

import java.util.ArrayList;
import java.util.List;

/** Makes pieces: what she finds, with a worth in her own eyes. */
final class Finding {

    private static final List<String> WORDS = List.of(
            "with a chipped corner",
            "with barley-twist legs",
            "with a carved edge",
            "from a closed tea room",
            "with old keyhole",
            "with a scalloped rim",
            "with turned feet",
            "missing one handle",
            "with painted flowers",
            "with dovetail joints",
            "a little crooked",
            "with ring marks",
            "from a school",
            "with beaded edge");
    private static final List<String> SPOTS =
            List.of("Shelf A", "Shelf B", "Under the bench", "Blue box", "Stall crate");

    private final State shop;
    private int count;

    Finding(State shop) {
        this.shop = shop;
    }

    List<State.Piece> pieces(int number) {
        List<State.Piece> found = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            found.add(piece());
        }
        return found;
    }

    private State.Piece piece() {
        Draws draws = shop.draws;
        Catalogue.Kind kind = draws.one(Catalogue.KINDS);
        String style = draws.one(Catalogue.STYLES);
        int value = (int) (kind.value() * draws.factor(0.7, 1.5));
        String title = kind.name() + " " + draws.one(WORDS);
        State.Piece piece = new State.Piece(draws.id(), title, style, draws.chance(0.1), value, kind.work(), shop.day);
        count++;
        shop.rows.add(
                "piece",
                piece.id,
                "P%04d".formatted(count),
                title,
                shop.id(kind.name()),
                shop.id(style),
                piece.material = draws.one(kind.materials()),
                draws.chance(0.6) ? value / 2 : "",
                draws.one(SPOTS),
                draws.chance(0.1) ? "-2 scratches, see underside" : "",
                "",
                "",
                "");
        if (draws.chance(0.2)) {
            shop.rows.add("piece_tag", piece.id, draws.chance(0.5) ? "gift" : "set idea");
        }
        shop.pieces.add(piece);
        return piece;
    }
}
