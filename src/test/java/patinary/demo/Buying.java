package patinary.demo;

import static patinary.demo.Draws.usd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import patinary.buying.ChargeKind;
import patinary.buying.LineKind;

/** Trips and what they bring home. */
final class Buying {

    private static final List<Object[]> NOTHING = List.of();

    private final State shop;
    private final Finding finding;
    private int nextTrip = 3;
    private int receipts;
    private long credit = 2500;
    private UUID owed = new UUID(0, 0);
    private long owedAmount;

    Buying(State shop, Finding finding) {
        this.shop = shop;
        this.finding = finding;
    }

    void today() {
        if (owedAmount > 0 && shop.day.getDayOfMonth() == 15) {
            shop.rows.add(
                    "bill_paid", shop.document(shop.draws.id(), "", owed, shop.id(Catalogue.BANK), usd(owedAmount)));
            shop.pay(Catalogue.BANK, -owedAmount);
            owedAmount = 0;
        }
        if (--nextTrip > 0) {
            return;
        }
        nextTrip = shop.draws.between(4, 10);
        int which = receipts++ % 8;
        switch (which) {
            case 0, 4 -> thrift();
            case 1, 5 -> supplies();
            case 2 -> clearance();
            case 3 -> flea();
            case 6 -> auction();
            default -> gift();
        }
    }

    private Object trip(String purpose, String where, int least, int most) {
        UUID id = shop.draws.id();
        int miles = shop.draws.between(least * 10, most * 10);
        String rate = shop.day.getYear() == 2025 ? "0.700" : "0.725";
        shop.rows.add(
                "trip",
                shop.document(
                        id,
                        "",
                        purpose,
                        "Workroom",
                        where,
                        java.math.BigDecimal.valueOf(miles, 1).toPlainString(),
                        rate,
                        Driving.VAN));
        return id;
    }

    private void thrift() {
        Till till = new Till(shop);
        for (State.Piece piece : finding.pieces(shop.draws.between(2, 4))) {
            int off = shop.draws.chance(0.3) ? 100 : 0;
            till.pieces(piece.title, 1, price(piece.value, 0.08, 0.2), false, List.of(piece), off);
        }
        if (shop.draws.chance(0.4)) {
            till.other(LineKind.HOME, "Jigsaw for the family", 300, null);
        }
        if (shop.draws.chance(0.3)) {
            till.charge(ChargeKind.DISCOUNT, "Green tag day", "20", 0, false, false);
        }
        till.charge(ChargeKind.TAX, "Sales tax", "6", 0, false, false);
        if (shop.draws.chance(0.5)) {
            long up = 100 - till.total() % 100;
            till.other(LineKind.CHARITY, "Round up for the animal shelter", up, null);
        }
        pay(till, "Hollow Barn thrift room", trip("Thrift round", "Hollow Barn", 6, 14), "", Catalogue.CARD);
    }

    private void clearance() {
        Till till = new Till(shop);
        List<State.Piece> lot = finding.pieces(shop.draws.between(4, 6));
        long worth = lot.stream().mapToLong(piece -> piece.value).sum();
        till.pieces("One lot from the attic", 1, price(worth, 0.07, 0.13), false, lot, 0);
        till.charge(ChargeKind.PREMIUM, "Premium", "10", 0, false, false);
        pay(till, "Marsh Lane house clearances", trip("House clearance", "Marsh Lane", 15, 40), "", Catalogue.BANK);
    }

    private void flea() {
        Till till = new Till(shop);
        for (State.Piece piece : finding.pieces(shop.draws.between(2, 3))) {
            till.pieces(piece.title, 1, price(piece.value, 0.06, 0.18), true, List.of(piece), 0);
        }
        till.charge(ChargeKind.ROUNDING, "Called it even", "", -(till.total() % 100), false, false);
        pay(
                till,
                "Brinewater flea field",
                trip("Flea field", "Brinewater", 20, 35),
                "Prices from memory",
                Catalogue.CASH);
    }

    private void auction() {
        Till till = new Till(shop);
        for (State.Piece piece : finding.pieces(shop.draws.between(2, 3))) {
            till.pieces(piece.title, 1, price(piece.value, 0.1, 0.22), false, List.of(piece), 0);
        }
        till.charge(ChargeKind.PREMIUM, "Buyer's premium", "12.5", 0, true, false);
        till.charge(ChargeKind.FEE, "Hall fee", "", 250, true, false);
        till.charge(ChargeKind.TAX, "Sales tax", "6", 0, false, false);
        pay(till, "Tuesday yard auction", trip("Auction", "Tuesday yard", 10, 18), "", Catalogue.BANK);
    }

    private void gift() {
        Till till = new Till(shop);
        till.pieces("Left on the step", 1, 0, false, finding.pieces(1), 0);
        till.write("Doorstep gifts", "", "A gift: nothing paid", NOTHING);
    }

    private void supplies() {
        Till till = new Till(shop);
        List<State.Supply> low = shop.supplies.stream()
                .sorted(Comparator.comparingDouble(supply -> (double) supply.bench / supply.content))
                .limit(shop.draws.between(5, 7))
                .toList();
        for (State.Supply supply : low) {
            till.supply(supply, shop.draws.chance(0.3) ? 2 : 1, false, shop.draws.chance(0.2) ? 10 : 0);
        }
        shop.supplies.stream()
                .filter(supply -> supply.retail && supply.shelf <= supply.content)
                .limit(2)
                .forEach(supply -> till.supply(supply, 4, true, 25));
        till.other(LineKind.EXPENSE, "Boxes and paper", 1250, "packaging");
        till.charge(ChargeKind.SHIPPING, "Carriage", "", 890, false, false);
        till.charge(ChargeKind.TAX, "Sales tax", "6", 0, false, false);
        till.onlyOn(1);
        if (shop.draws.chance(0.25)) {
            till.charge(ChargeKind.DISCOUNT, "Voucher", "", 500, false, true);
        }
        paySupplies(till);
    }

    private void paySupplies(Till till) {
        long total = till.total();
        List<Object[]> payments = new ArrayList<>();
        long byCredit = Math.min(credit, total);
        if (byCredit > 0) {
            payments.add(new Object[] {"STORE_CREDIT", "", byCredit});
            credit -= byCredit;
        }
        if (owedAmount == 0 && shop.draws.chance(0.25) && total > byCredit) {
            owed = till.id();
            owedAmount = total - byCredit;
            payments.add(new Object[] {"OWED", "", owedAmount});
        } else if (total > byCredit) {
            payments.add(new Object[] {"PLACE", shop.id(Catalogue.BANK), total - byCredit});
            shop.pay(Catalogue.BANK, byCredit - total);
        }
        till.write("Plank and Pigment supply room", "", "Ordered by post", payments);
    }

    /** Jars that go back for store credit. */
    void returnSupply() {
        State.Supply supply = shop.supplies.stream()
                .filter(s -> s.handy && s.bench >= s.content)
                .findFirst()
                .orElseThrow();
        UUID id = shop.draws.id();
        shop.rows.add(
                "supplier_return",
                shop.document(
                        id,
                        "Unopened",
                        shop.id("Plank and Pigment supply room"),
                        "STORE_CREDIT",
                        "",
                        "",
                        usd(supply.price)));
        shop.rows.add("supplier_return_supply", id, 1, supply.id, "BENCH", supply.content);
        supply.bench -= supply.content;
        credit += supply.price;
    }

    /** A piece that goes back for cash. */
    void returnPiece() {
        State.Piece piece = shop.in("FOUND").stream()
                .filter(found -> found.since.isAfter(shop.day.minusDays(40)) && found.since.isAfter(State.FIRST))
                .findFirst()
                .orElseThrow();
        UUID id = shop.draws.id();
        shop.rows.add(
                "supplier_return",
                shop.document(id, "Woodworm, taken back", "", "PLACE", shop.id(Catalogue.CASH), "", usd(400)));
        shop.rows.add("supplier_return_piece", id, piece.id);
        shop.pay(Catalogue.CASH, 400);
        shop.move(piece, "GONE");
    }

    private void pay(Till till, String source, Object trip, String note, String place) {
        long total = till.total();
        boolean split = place.equals(Catalogue.BANK) && total > 9000 && shop.at(Catalogue.CASH) > 6000;
        List<Object[]> payments = new ArrayList<>();
        long cash = split ? 3000 : 0;
        if (split) {
            payments.add(new Object[] {"PLACE", shop.id(Catalogue.CASH), cash});
            shop.pay(Catalogue.CASH, -cash);
        }
        String rest = place.equals(Catalogue.CASH) && shop.at(Catalogue.CASH) < total ? Catalogue.CARD : place;
        if (rest.equals(Catalogue.CARD) && shop.draws.chance(0.2)) {
            payments.add(new Object[] {"OWNER", "", total - cash});
        } else {
            payments.add(new Object[] {"PLACE", shop.id(rest), total - cash});
            shop.pay(rest, cash - total);
        }
        till.write(source, trip, note, payments);
    }

    private long price(long value, double least, double most) {
        return Math.max(50, (long) (value * shop.draws.factor(least, most)) / 25 * 25);
    }
}
