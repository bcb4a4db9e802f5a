package patinary.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Sheets with motifs, a pot of powder paint with a cup for the slick piece, and what was kept of it; all invented. */
final class Handling {

    private static final LocalDate BOUGHT = LocalDate.of(2026, 4, 21);
    private static final LocalDate CUT = LocalDate.of(2026, 4, 27);
    private static final LocalDate MIXED = LocalDate.of(2026, 4, 28);
    private static final LocalDate USED = LocalDate.of(2026, 4, 29);
    private static final String LINE = "Larkholt powder paints";

    private final State shop;

    Handling(State shop) {
        this.shop = shop;
    }

    /** To be called when everything else is written: it draws last, so that the other rows stay as they are. */
    void write() {
        sheets();
        UUID powder = supply("Barn red powder", 500, 1450);
        UUID grip = supply("Grip additive", 250, 1600);
        shop.rows.add("supply_limit", powder, "", 7, "", "");
        shop.rows.add("supply_limit", grip, 60, 7, 50, "Label of the invented maker: at most half as much as paint");
        buy();
        List<State.Piece> at = new ArrayList<>(shop.in("BENCH"));
        at.addAll(shop.in("FOUND"));
        at.addAll(shop.in("READY"));
        cut(at.get(0));
        pot(powder, grip, at);
        new LatePots(shop, LINE).write(at.subList(4, 7));
        shop.day = State.LAST;
    }

    private void sheets() {
        sheet("Botanical sheet", 60, 90);
        sheet("Folk border sheet", 60, 60);
        sheet("Tissue, birds", 60, 70);
        sheet("Script paper", 60, 70);
        shop.rows.add("supply_motif", shop.id("Botanical sheet"), "banner", 40, 8);
        shop.rows.add("supply_motif", shop.id("Botanical sheet"), "fern corner", 10, 10);
        shop.rows.add("supply_motif", shop.id("Botanical sheet"), "rose", 12, 15);
        shop.rows.add("supply_motif", shop.id("Folk border sheet"), "border", 60, 6);
    }

    private void sheet(String name, int width, int height) {
        shop.rows.add("supply_sheet", shop.id(name), width, height);
    }

    private UUID supply(String name, int content, int price) {
        if (!shop.ids.containsKey(LINE)) {
            shop.rows.add("supply_line", shop.id(LINE), LINE, "Larkholt Mill (invented)");
        }
        UUID id = shop.id(name);
        shop.rows.add("supply", id, shop.id(LINE), name, "VOLUME", "", "", "", "", "");
        shop.rows.add("supply_pack", id, "jar", content);
        shop.supplies.add(new State.Supply(id, name, "ml", content, price, false, false));
        return id;
    }

    private void buy() {
        shop.day = BOUGHT;
        Till till = new Till(shop);
        List<State.Supply> fresh = shop.supplies.subList(shop.supplies.size() - 2, shop.supplies.size());
        fresh.forEach(supply -> till.supply(supply, 1, false, 0));
        long total = till.total();
        List<Object[]> payments = List.<Object[]>of(new Object[] {"PLACE", shop.id(Catalogue.BANK), total});
        till.write("Plank and Pigment supply room", "", "Powder paint to try", payments);
        shop.pay(Catalogue.BANK, -total);
        shop.rows.add("lot_date", till.id(), fresh.get(0).id, MIXED, "2027-04-30");
        shop.rows.add("lot_date", till.id(), fresh.get(1).id, BOUGHT.plusDays(1), "");
    }

    /** Two roses and a strip for the edge. */
    private void cut(State.Piece piece) {
        UUID id = entry(CUT, 40, "Roses laid and rubbed down", List.of(piece));
        UUID sheet = shop.id("Botanical sheet");
        shop.rows.add("bench_use", id, 1, sheet, "2 times rose", 360, false, "");
        shop.rows.add("bench_cut", id, 1, "MOTIF", "rose", 12, 15, 2);
        shop.rows.add("bench_use", id, 2, sheet, "6 x 45 cm", 270, false, "");
        shop.rows.add("bench_cut", id, 2, "SIZE", "", 6, 45, 1);
        shop.rows.add("bench_use", id, 3, sheet, "1/10", 540, true, "");
        shop.rows.add("bench_cut", id, 3, "PART", "", "", "", 1);
        for (int line = 1; line <= 3; line++) {
            shop.rows.add("bench_use_piece", id, line, piece.id, 1);
        }
    }

    /** 300 ml: 165 on two pieces, 60 into the cup for the slick one, 75 kept; of these 40 used the day after. */
    private void pot(UUID powder, UUID grip, List<State.Piece> at) {
        List<State.Piece> worked = at.subList(1, 4);
        UUID kept = shop.draws.id();
        shop.rows.add("supply", kept, shop.id(LINE), "Barn red, mixed " + MIXED, "VOLUME", "", "", "", "", "");
        UUID id = entry(MIXED, 90, "First coat of barn red; the tray is slick", worked);
        shop.rows.add("bench_use", id, 1, powder, "200 ml", 200, false, "");
        shop.rows.add("bench_use", id, 2, grip, "30 ml", 30, false, "");
        shop.rows.add("bench_pot", id, 1, "Barn red", "", 0, 200, 300, 75, kept, MIXED.plusDays(7));
        shop.rows.add("bench_pot", id, 2, "Cup with grip", 1, 60, 0, 90, 0, "", "");
        shop.rows.add("bench_pot_use", id, 1, 1);
        shop.rows.add("bench_pot_use", id, 2, 2);
        for (State.Piece piece : worked.subList(0, 2)) {
            shop.rows.add("bench_pot_piece", id, 1, piece.id, 1);
            shop.rows.add("bench_use_piece", id, 1, piece.id, "82.5");
        }
        UUID slick = worked.get(2).id;
        shop.rows.add("bench_pot_piece", id, 2, slick, 1);
        shop.rows.add("bench_use_piece", id, 1, slick, 60);
        shop.rows.add("bench_use_piece", id, 2, slick, 90);
        shop.rows.add("bench_use_pot", id, 1, kept, 75);
        UUID later = entry(USED, 25, "Second coat from the kept pot", worked.subList(0, 1));
        shop.rows.add("bench_use", later, 1, kept, "40 ml", 40, false, "");
        shop.rows.add("bench_use_piece", later, 1, worked.get(0).id, 1);
    }

    private UUID entry(LocalDate day, int minutes, String done, List<State.Piece> worked) {
        shop.day = day;
        UUID id = shop.draws.id();
        shop.rows.add("bench_entry", shop.document(id, "", minutes, done, ""));
        worked.forEach(piece -> shop.rows.add("bench_piece", id, piece.id, false));
        return id;
    }
}
