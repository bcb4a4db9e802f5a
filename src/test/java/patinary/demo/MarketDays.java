package patinary.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** One market day that is over, one that is being packed for, and a sheet of labels; all invented. */
final class MarketDays {

    private static final LocalDate OVER = LocalDate.of(2026, 4, 18);
    private static final LocalDate NEXT = LocalDate.of(2026, 5, 2);
    /** Where a row of pieces has the place. */
    private static final int PLACE = 7;

    private final State shop;

    MarketDays(State shop) {
        this.shop = shop;
    }

    /** To be called when everything else is written: it draws last, so that the other rows stay as they are. */
    void write() {
        shop.rows.add("label_setting", "address", "https://workroom.example");
        shop.rows.add("label_grid", shop.draws.id(), "Swing tags", "LETTER", 6, 4, 12, 15, 45, 40, 4, 3);
        over();
        next();
    }

    /** What sold that day stays in the market's crate; the rest went back to its place. */
    private void over() {
        String title = "Orchard green market";
        UUID list = list(title, OVER, "Pitch 12, by the pump. Bring the low table.");
        Stream.concat(
                        shop.in("SOLD").stream().filter(piece -> piece.since.equals(OVER)),
                        offered(OVER).limit(8))
                .forEach(piece -> {
                    boolean home = !piece.state.equals("SOLD");
                    shop.rows.add("packing_piece", list, piece.id, true, home, place(piece));
                    if (!home) {
                        put(piece, title);
                    }
                });
    }

    private void next() {
        String title = "Lantern fair";
        UUID list = list(title, NEXT, "");
        List<State.Piece> chosen = offered(NEXT).limit(10).toList();
        chosen.stream().skip(6).forEach(piece -> shop.rows.add("packing_piece", list, piece.id, false, false, ""));
        chosen.stream().limit(6).forEach(piece -> {
            shop.rows.add("packing_piece", list, piece.id, true, false, place(piece));
            put(piece, title);
        });
    }

    private UUID list(String title, LocalDate day, String note) {
        UUID id = shop.draws.id();
        shop.rows.add("packing_list", id, title, day, shop.id(Catalogue.STALL), note);
        return id;
    }

    private Stream<State.Piece> offered(LocalDate before) {
        return shop.in("OFFERED").stream().filter(piece -> piece.since.isBefore(before));
    }

    private String place(State.Piece piece) {
        return row(piece).get(PLACE);
    }

    private void put(State.Piece piece, String place) {
        row(piece).set(PLACE, place);
    }

    private List<String> row(State.Piece piece) {
        return shop.rows.of("piece").stream()
                .filter(row -> row.get(0).equals(piece.id.toString()))
                .findFirst()
                .orElseThrow();
    }
}
