package patinary.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Pots whose cost comes after the mixing: a powder used before it was bought, kept, poured into a second pot, and partly dried
 * up; then its receipt, and a count that says that more of it was used. All invented.
 */
final class LatePots {

    private static final LocalDate MIXED = LocalDate.of(2026, 4, 25);
    private static final int JAR = 250;
    private static final int PRICE = 950;

    private final State shop;
    private final String line;

    LatePots(State shop, String line) {
        this.shop = shop;
        this.line = line;
    }

    /** 120 ml of powder make 180, of which 80 are kept; 30 of these on the second piece, 20 into a pot for the third. */
    void write(List<State.Piece> worked) {
        UUID powder = supply("Slate powder");
        UUID pale = supply("Chalk powder");
        shop.rows.add("supply_pack", powder, "jar", JAR);
        shop.rows.add("supply_pack", pale, "jar", JAR);
        UUID kept = supply("Slate, mixed " + MIXED);
        UUID second = supply("Pale slate, mixed " + MIXED.plusDays(2));
        UUID id = entry(0, "Slate from the sample jar, before its receipt", worked.get(0));
        shop.rows.add("bench_use", id, 1, powder, "120 ml", 120, true, "");
        pot(id, "Slate", 60, 180, 80, kept);
        shop.rows.add("bench_use_piece", id, 1, worked.get(0).id, 100);
        shop.rows.add("bench_use_pot", id, 1, kept, 80);
        shop.rows.add("bench_pot_piece", id, 1, worked.get(0).id, 1);
        UUID later = entry(1, "Edges from the kept slate", worked.get(1));
        shop.rows.add("bench_use", later, 1, kept, "30 ml", 30, false, "");
        shop.rows.add("bench_use_piece", later, 1, worked.get(1).id, 1);
        paler(kept, pale, second, worked.get(2));
        counted(3, kept, 20, true);
        buy(powder, pale);
        counted(5, powder, 110, false);
    }

    /** 20 ml of the kept pot and 40 of another powder, 30 of them kept; 10 of these on the same piece the day after. */
    private void paler(UUID kept, UUID pale, UUID second, State.Piece piece) {
        UUID id = entry(2, "Paler, for the inside", piece);
        shop.rows.add("bench_use", id, 1, kept, "20 ml", 20, false, "");
        shop.rows.add("bench_use", id, 2, pale, "40 ml", 40, false, "");
        pot(id, "Pale slate", 0, 60, 30, second);
        shop.rows.add("bench_pot_use", id, 2, 1);
        shop.rows.add("bench_pot_piece", id, 1, piece.id, 1);
        for (int use = 1; use <= 2; use++) {
            shop.rows.add("bench_use_piece", id, use, piece.id, 30);
            shop.rows.add("bench_use_pot", id, use, second, 30);
        }
        UUID again = entry(3, "Second coat inside", piece);
        shop.rows.add("bench_use", again, 1, second, "10 ml", 10, false, "");
        shop.rows.add("bench_use_piece", again, 1, piece.id, 1);
    }

    private void pot(UUID id, String name, int water, int made, int rest, UUID kept) {
        shop.rows.add("bench_pot", id, 1, name, "", 0, water, made, rest, kept, MIXED.plusDays(9));
        shop.rows.add("bench_pot_use", id, 1, 1);
    }

    private void counted(int days, UUID supply, int left, boolean waste) {
        shop.day = MIXED.plusDays(days);
        shop.rows.add("supply_count", shop.document(shop.draws.id(), "", supply, "BENCH", left, waste, ""));
    }

    private void buy(UUID... powders) {
        shop.day = MIXED.plusDays(4);
        Till till = new Till(shop);
        for (UUID powder : powders) {
            till.supply(new State.Supply(powder, "Powder", "ml", JAR, PRICE, false, false), 1, false, 0);
        }
        long total = till.total();
        List<Object[]> payments = List.<Object[]>of(new Object[] {"PLACE", shop.id(Catalogue.BANK), total});
        till.write("Plank and Pigment supply room", "", "The powders of the samples", payments);
        shop.pay(Catalogue.BANK, -total);
    }

    private UUID supply(String name) {
        UUID id = shop.id(name);
        shop.rows.add("supply", id, shop.id(line), name, "VOLUME", "", "", "", "", "");
        return id;
    }

    private UUID entry(int days, String done, State.Piece piece) {
        shop.day = MIXED.plusDays(days);
        UUID id = shop.draws.id();
        shop.rows.add("bench_entry", shop.document(id, "", 30, done, ""));
        shop.rows.add("bench_piece", id, piece.id, false);
        return id;
    }
}
