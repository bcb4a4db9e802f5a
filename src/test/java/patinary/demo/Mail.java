package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** How the last parcels went, what still waits, and two that the mail did not treat well; carriers and prices are invented. */
final class Mail {

    private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final LocalDate UNSENT = LocalDate.of(2026, 4, 17);
    private static final LocalDate TABLE = LocalDate.of(2025, 1, 1);
    private static final LocalDate DEARER = LocalDate.of(2026, 1, 15);
    private static final int ID = 0;
    private static final int DATE = 1;
    private static final int ORDER = 6;
    private static final int SHIPPING = 8;
    private static final int POSTED = 13;
    private static final String SMALL = "Small parcel";
    private static final String LARGE = "Large parcel";
    private static final int POUND = 454;

    private final State shop;

    Mail(State shop) {
        this.shop = shop;
    }

    /** To be called when every other row is written: it draws last. */
    void write() {
        UUID small = service(SMALL, 1);
        UUID large = service(LARGE, 2);
        Map<String, String> pieces = new HashMap<>();
        shop.rows.of("sale_piece").forEach(row -> pieces.putIfAbsent(row.get(0), row.get(2)));
        List<List<String>> sent = shop.rows.of("sale").stream()
                .filter(sale -> !sale.get(ORDER).isEmpty())
                .filter(sale -> !LocalDate.parse(sale.get(DATE)).isBefore(FIRST))
                .toList();
        for (int i = 0; i < sent.size(); i++) {
            send(sent.get(i), i, small, large, pieces);
        }
        losses();
    }

    private UUID service(String name, int size) {
        UUID id = shop.draws.id();
        shop.rows.add("carrier_service", id, name, shop.id(Catalogue.CARD));
        int line = 0;
        for (LocalDate from : List.of(TABLE, DEARER)) {
            int more = from.equals(TABLE) ? 0 : 45;
            for (int pounds = 1; pounds <= 10; pounds += 3) {
                shop.rows.add(
                        "carrier_rate",
                        id,
                        ++line,
                        from,
                        pounds * size * POUND,
                        size == 1 ? "14 x 12 x 8 in" : "",
                        usd(480L * size + 130L * pounds + more));
            }
        }
        return id;
    }

    private void send(List<String> sale, int number, UUID small, UUID large, Map<String, String> pieces) {
        boolean heavy = Double.parseDouble(sale.get(SHIPPING)) > 15;
        boolean unsent = LocalDate.parse(sale.get(DATE)).isAfter(UNSENT);
        String posted = sale.get(POSTED);
        if (unsent) {
            sale.set(POSTED, "");
        }
        int weight = heavy ? 2600 + 35 * number : 640 + 20 * number;
        String size = heavy ? "18 x 14 x 9 in" : "12 x 9 x 6 in";
        shop.rows.add(
                "sending",
                sale.get(ID),
                false,
                unsent ? "" : posted,
                number % 3 == 0 ? "Invented Lane " + (number + 4) + "\nNowhere-on-the-Quay" : "",
                size,
                weight,
                heavy ? large : small,
                unsent ? "" : "INVENTED-" + (7300 + number),
                "");
        if (pieces.containsKey(sale.get(ID))) {
            shop.rows.add(
                    "piece_size",
                    pieces.get(sale.get(ID)),
                    heavy ? "15 x 11 x 6 in" : "9 x 6 x 4 in",
                    weight - (heavy ? 700 : 250));
        }
    }

    /** One came broken and the carrier paid; one never came, and nobody has answered yet. */
    private void losses() {
        List<List<String>> mailed = shop.rows.of("sale").stream()
                .filter(sale -> !sale.get(ORDER).isEmpty())
                .filter(sale -> LocalDate.parse(sale.get(DATE)).isBefore(FIRST))
                .toList();
        List<String> broken = mailed.get(mailed.size() - 9);
        List<String> lost = mailed.get(mailed.size() - 2);
        LocalDate noticed = LocalDate.parse(broken.get(DATE)).plusDays(6);
        UUID income = shop.draws.id();
        shop.day = noticed.plusDays(20);
        shop.rows.add(
                "other_income",
                shop.document(
                        income,
                        "Loss in the mail 5512",
                        "carrier compensation",
                        "",
                        shop.id(Catalogue.BANK),
                        usd(2400),
                        ""));
        shop.pay(Catalogue.BANK, 2400);
        shop.day = State.LAST;
        loss(broken, "DAMAGED", noticed, "The corner of the box was crushed", usd(2900), "5512", income);
        loss(lost, "LOST", LocalDate.parse(lost.get(DATE)).plusDays(21), "", usd(4100), "5609", "");
    }

    private void loss(
            List<String> sale,
            String what,
            LocalDate noticed,
            String words,
            Object claimed,
            String reference,
            Object income) {
        shop.rows.add(
                "mail_loss",
                shop.draws.id(),
                sale.get(ID),
                what,
                noticed,
                words,
                noticed.plusDays(1),
                claimed,
                reference,
                "",
                income);
    }
}
