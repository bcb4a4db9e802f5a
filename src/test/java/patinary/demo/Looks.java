package patinary.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** The finishes of the invented shop. Amounts and waits are starting values of common practice, no source. */
final class Looks {

    static final String MINERAL = "Two coats and clear wax";
    static final String SEALED = "Stain blocked and sealed";
    static final String GILT = "Gilded edges";

    private static final String FOOT = "929.0304";

    private static final int PLANNED = 5;
    private static final int AREA = 6;
    private static final int PLAN = 9;

    private final State shop;

    Looks(State shop) {
        this.shop = shop;
    }

    void write() {
        finish(MINERAL, "For oak and pine that was sanded. Soft sheen (invented example)", false);
        step(MINERAL, 1, "Clean, scuff lightly, wipe off the dust", 15, "", "", "", "DUST-1");
        step(MINERAL, 2, "First thin coat", 20, "120", "240", "Second coat", "");
        step(MINERAL, 3, "Second thin coat", 20, "720", "1440", "Wax", "");
        step(MINERAL, 4, "Rub in clear wax with a lint-free rag", 15, "10", "15", "Wipe back the excess", "RAG-4");
        supply(MINERAL, 1, 2, "Linen white", "8 ml", 8, FOOT);
        supply(MINERAL, 2, 3, "Linen white", "8 ml", 8, FOOT);
        supply(MINERAL, 3, 4, "Clear wax", "3 g", 3, FOOT);
        finish(SEALED, "For what is handled much; wants its month to harden (invented example)", false);
        step(SEALED, 1, "Block stains", 15, "60", "120", "First coat", "");
        step(SEALED, 2, "One coat of color", 20, "240", "480", "Seal", "");
        step(SEALED, 3, "Seal thinly, twice", 20, "43200", "43200", "Wrap tightly", "");
        supply(SEALED, 1, 1, "Stain blocker", "9 ml", 9, FOOT);
        supply(SEALED, 2, 2, "Pond green", "8 ml", 8, FOOT);
        supply(SEALED, 3, 3, "Matt sealer", "90 ml", 90, "10000");
        finish(GILT, "Given up: the foil wore off (invented example)", true);
        step(GILT, 1, "Copper tape on the edges", 10, "", "", "", "");
        supply(GILT, 1, 1, "Copper foil tape", "120 cm", 120, "");
    }

    /** The finish that an entry followed, by the supplies it used: the id, or an empty cell. */
    static Object followedWith(List<String> supplies) {
        if (supplies.contains("Linen white") || supplies.contains("Clear wax")) {
            return id(MINERAL);
        }
        return supplies.contains("Stain blocker") || supplies.contains("Matt sealer") ? id(SEALED) : "";
    }

    /** The first pieces that wait have a finish planned; one of them was measured as a shape. */
    void plan() {
        List<UUID> waiting =
                shop.in("FOUND").stream().map(piece -> piece.id).limit(PLANNED).toList();
        for (List<String> row : shop.rows.of("piece")) {
            int at = waiting.indexOf(UUID.fromString(row.get(0)));
            if (at >= 0) {
                row.set(PLAN, id(at % 2 == 0 ? MINERAL : SEALED).toString());
            }
            if (at == 0) {
                // 60 · 40 − 50 · 30 + 2 · 2 (60 + 40 + 50 + 30) = 1620
                row.set(AREA, "1620");
                row.set(PLAN + 1, "FRAME");
                row.set(PLAN + 2, "60 x 40 x 50 x 30 x 2 cm");
            }
        }
    }

    /** Its own, so that nothing else of the shop is drawn differently. */
    private static UUID id(String finish) {
        return UUID.nameUUIDFromBytes(finish.getBytes(StandardCharsets.UTF_8));
    }

    private void finish(String name, String note, boolean removed) {
        shop.rows.add("finish", id(name), name, note, removed);
    }

    private void step(
            String finish, int line, String what, int minutes, String from, String to, String words, String cautions) {
        shop.rows.add("finish_step", id(finish), line, what, minutes, from, to, words, cautions);
    }

    private void supply(String finish, int line, int step, String supply, String typed, int quantity, String per) {
        shop.rows.add("finish_supply", id(finish), line, step, shop.id(supply), typed, quantity, per);
    }
}
