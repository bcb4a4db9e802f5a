package patinary.demo;

import static patinary.demo.Draws.usd;

import java.util.UUID;

/** The day on which she starts with the program: things on the shelf, half-used jars, money here and there. */
final class FirstDay {

    private final State shop;
    private final Finding finding;
    private int line;

    FirstDay(State shop, Finding finding) {
        this.shop = shop;
        this.finding = finding;
    }

    void open() {
        UUID opening = shop.id("opening");
        shop.rows.add("opening", shop.document(opening, "Counted on New Year's Day", "48211.5", ""));
        for (State.Piece piece : finding.pieces(16)) {
            boolean known = shop.draws.chance(0.5);
            shop.rows.add("opening_piece", opening, piece.id, usd(piece.value / 6), known);
            piece.workLeft = shop.draws.chance(0.5) ? 0 : piece.workLeft;
            shop.move(piece, piece.workLeft == 0 ? "READY" : "FOUND");
        }
        for (State.Supply supply : shop.supplies) {
            if (shop.draws.chance(0.55)) {
                supply(opening, supply);
            }
        }
        line = 0;
        money(opening, Catalogue.CASH, 18500);
        money(opening, Catalogue.BANK, 214000);
        money(opening, Catalogue.WEB, 6340);
        balance(opening, "RECEIVABLE", "", "Neighbour still owes for a stool", 4500);
        balance(opening, "PAYABLE", "", "Last jars of the old year", 3800);
        balance(opening, "STORE_CREDIT_HELD", shop.id("Plank and Pigment supply room"), "Jars brought back", 2500);
        balance(opening, "SALES_TAX_DUE", "", "December", 2140);
        shop.taxDue = 2140;
    }

    private void supply(UUID opening, State.Supply supply) {
        long quantity = Math.max(1, supply.content * shop.draws.between(2, 9) / 10);
        supply.bench = quantity;
        long cost = supply.price * quantity / supply.content;
        shop.rows.add("opening_supply", opening, ++line, supply.id, "BENCH", quantity, usd(cost), true);
    }

    private void money(UUID opening, String place, long cents) {
        shop.pay(place, cents);
        shop.rows.add("opening_balance", opening, ++line, "MONEY", shop.id(place), "", place, usd(cents));
    }

    private void balance(UUID opening, String account, Object party, String title, long cents) {
        shop.rows.add("opening_balance", opening, ++line, account, "", party, title, usd(cents));
    }
}
