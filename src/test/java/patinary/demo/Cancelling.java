package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** A piece that two buyers paid for on one weekend, and an order that its buyer took back; all invented. */
final class Cancelling {

    private static final LocalDate SECOND_BUYER = LocalDate.of(2026, 2, 1);
    private static final int ID = 0;
    private static final int DATE = 1;
    private static final int PIECE = 2;

    private final State shop;

    Cancelling(State shop) {
        this.shop = shop;
    }

    /** To be called when every other row is written: it draws last. */
    void write() {
        LocalDate last = shop.day;
        List<String> sale = shop.rows.of("sale").stream()
                .filter(row -> LocalDate.parse(row.get(DATE)).isAfter(SECOND_BUYER))
                .filter(row -> pieces(row).size() == 1)
                .findFirst()
                .orElseThrow();
        String piece = pieces(sale).get(0).get(PIECE);
        shop.day = LocalDate.parse(sale.get(DATE)).plusDays(1);
        order(piece, "R. Madeup", "QUAY-0117", 638, "Was sold the day before, and two buyers had it");
        shop.day = last;
    }

    private List<List<String>> pieces(List<String> sale) {
        return shop.rows.of("sale_piece").stream()
                .filter(row -> row.get(ID).equals(sale.get(ID)))
                .toList();
    }

    /** 52.00 and 12.50 for shipping on the marketplace, which keeps 9.5 % and 0.25, 6.38, and returns it: its balance was paid out before. */
    private void order(String piece, String buyer, String number, long feeBack, String why) {
        UUID id = shop.draws.id();
        UUID place = shop.id(Catalogue.QUAY);
        shop.rows.add(
                "sale",
                shop.document(
                        id,
                        "",
                        shop.id(Catalogue.MARKET),
                        buyer,
                        number,
                        usd(0),
                        usd(1250),
                        usd(0),
                        true,
                        usd(638),
                        place,
                        "",
                        "",
                        "",
                        ""));
        shop.rows.add("sale_line", id, 1, "As offered on the quay", 1, usd(5200), usd(0), "", "", "", "", "");
        shop.rows.add("sale_undelivered", id, 1, piece, 1, "");
        shop.rows.add("sale_payment", id, 1, "PLACE", place, usd(6450));
        UUID back = shop.draws.id();
        shop.day = shop.day.plusDays(1);
        shop.rows.add("refund", shop.document(back, why, id, "PLACE", place, usd(1250), usd(0), usd(feeBack), place));
        shop.rows.add("refund_line", back, 1, piece, "", "", usd(5200), false, false, "");
    }
}
