package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.util.UUID;

/** Things of other people, a shop on the quay where some of hers lie, and a jar that came free; all invented. */
final class Agreeing {

    private final State shop;

    Agreeing(State shop) {
        this.shop = shop;
    }

    /** To be called when every other row is written: it draws last. */
    void write() {
        LocalDate last = shop.day;
        UUID chair = piece("P9001", "Rocking chair of the yellow house");
        own(
                chair,
                "COMMISSION",
                "The yellow house",
                LocalDate.of(2026, 4, 2),
                "185",
                "2026-05-16",
                "",
                "Keep the arms bare");
        shop.day = LocalDate.of(2026, 4, 2);
        shop.rows.add(
                "payment",
                shop.document(
                        shop.draws.id(),
                        "For the rocking chair",
                        "",
                        "The yellow house",
                        shop.id(Catalogue.BANK),
                        usd(6000)));
        UUID vase = piece("P9002", "Blue vase of a neighbour");
        own(vase, "CONSIGNED", "Neighbour Fay (invented)", LocalDate.of(2026, 3, 10), "", "", "60", "");
        UUID stool = piece("P9003", "Milking stool of a neighbour");
        own(stool, "CONSIGNED", "Neighbour Fay (invented)", LocalDate.of(2026, 3, 10), "", "", "60", "");
        sell(vase);
        shop.rows.add("channel_away", shop.id(Catalogue.MARKET));
        shop.day = LocalDate.of(2026, 2, 18);
        shop.rows.add(
                "supply_gift",
                shop.document(
                        shop.draws.id(),
                        "To try, with a request to show it",
                        "Wrenfold Carton (invented)",
                        shop.id("Clear wax"),
                        400,
                        usd(1650),
                        false));
        shop.day = last;
    }

    private UUID piece(String code, String title) {
        UUID id = shop.draws.id();
        shop.rows.add("piece", id, code, title, "", "", "wood", "", "Shelf by the door", "", "", "", "");
        return id;
    }

    private void own(
            UUID piece,
            String kind,
            String owner,
            LocalDate since,
            String price,
            String due,
            String percent,
            String note) {
        String agreed = price.isEmpty() ? "" : usd(Long.parseLong(price) * 100);
        shop.rows.add("piece_owner", piece, kind, owner, since, agreed, due, percent, "", note);
    }

    /** 34.00 at the stall, of which 20.40 are the neighbour's. */
    private void sell(UUID piece) {
        shop.day = LocalDate.of(2026, 3, 28);
        UUID id = shop.draws.id();
        UUID cash = shop.id(Catalogue.CASH);
        shop.rows.add(
                "sale",
                shop.document(
                        id,
                        "",
                        shop.id(Catalogue.STALL),
                        "Stall visitor",
                        "",
                        usd(0),
                        usd(0),
                        usd(0),
                        false,
                        usd(0),
                        "",
                        shop.day,
                        "",
                        "",
                        ""));
        shop.rows.add("sale_line", id, 1, "Blue vase", 1, usd(3400), usd(0), "", "", "", "", "");
        shop.rows.add("sale_piece", id, 1, piece, 1, usd(2040));
        shop.rows.add("sale_payment", id, 1, "PLACE", cash, usd(3400));
    }
}
