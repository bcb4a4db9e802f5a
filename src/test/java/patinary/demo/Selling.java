package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** Buyers: they come by season, shy away from high prices, and now and then send something back. */
final class Selling {

    static final LocalDate FEES_RISE = LocalDate.of(2025, 10, 1);

    private static final List<String> BUYERS = List.of(
            "A. Invented", "Mrs Nobody", "Stall visitor", "J. Fictive", "The yellow house", "R. Madeup", "@no one");

    private record Sold(UUID id, String channel, Offering.Offer offer, LocalDate on, long price, long tax) {}

    private final State shop;
    private final Offering offering;
    private final List<Sold> sold = new ArrayList<>();
    private final List<Sold> refunded = new ArrayList<>();
    private long deposit;
    private long given;
    private int order = 1000;
    private int small;

    Selling(State shop, Offering offering) {
        this.shop = shop;
        this.offering = offering;
    }

    void today() {
        for (Offering.Offer offer : List.copyOf(offering.open)) {
            if (offer.isOpen(shop.day) && offer.since.isBefore(shop.day)) {
                String channel = shop.draws.one(offer.channels);
                boolean stallShut = channel.equals(Catalogue.STALL) && !shop.isSaturday();
                if (!stallShut && shop.draws.chance(chance(offer, channel))) {
                    sell(offer, channel);
                }
            }
        }
        if (shop.isSaturday() && shop.draws.chance(0.16)) {
            sellRetail();
        }
    }

    private double chance(Offering.Offer offer, String channel) {
        double dear = (double) offer.price / offer.fair;
        double base = channel.equals(Catalogue.STALL) ? 0.05 : 0.0115;
        double liked = offer.pieces.get(0).style.equals("Marsh green and gilt")
                ? 1.7
                : offer.pieces.get(0).style.equals("Rust and rose") ? 0.5 : 1.0;
        return base * season(shop.day.getMonth()) * liked / (dear * dear);
    }

    private static double season(Month month) {
        return switch (month) {
            case NOVEMBER, DECEMBER -> 2.0;
            case JANUARY, FEBRUARY -> 0.6;
            case JULY, AUGUST -> 0.7;
            default -> 1.1;
        };
    }

    private void sell(Offering.Offer offer, String channel) {
        boolean stall = channel.equals(Catalogue.STALL);
        long discount = stall && shop.draws.chance(0.35) ? offer.price / 10 / 100 * 100 : 0;
        long shipping = stall ? 0 : shop.draws.between(7, 24) * 100L + 50;
        UUID id = shop.draws.id();
        long tax = sale(id, channel, offer.price, discount, shipping);
        shop.rows.add("sale_line", id, 1, offer.title, 1, usd(offer.price), usd(0), "", "", "", "", "");
        for (State.Piece piece : offer.pieces) {
            shop.rows.add("sale_piece", id, 1, piece.id, offer.pieces.size() == 1 ? 1 : piece.value / 100, "");
            shop.move(piece, "SOLD");
        }
        offering.over(offer, channel);
        sold.add(new Sold(id, channel, offer, shop.day, offer.price - discount, tax));
        if (!stall) {
            long carriage = Math.max(450, shipping - 100 + shop.draws.between(0, 400));
            shop.rows.add(
                    "postage",
                    shop.document(
                            shop.draws.id(),
                            "",
                            id,
                            shop.id(Catalogue.CARD),
                            usd(carriage),
                            usd(shop.draws.between(40, 260)),
                            false));
        }
    }

    private void sellRetail() {
        shop.supplies.stream()
                .filter(supply -> supply.shelf >= supply.content)
                .findFirst()
                .ifPresent(supply -> {
                    UUID id = shop.draws.id();
                    long price = supply.price * 3L / 2;
                    sale(id, Catalogue.STALL, price, 0, 0);
                    shop.rows.add(
                            "sale_line",
                            id,
                            1,
                            supply.name,
                            1,
                            usd(price),
                            usd(0),
                            supply.id,
                            supply.content,
                            "",
                            "",
                            "");
                    supply.shelf -= supply.content;
                });
    }

    /** Writes the head of a sale and how it was paid; returns the tax. */
    private long sale(UUID id, String channel, long price, long discount, long shipping) {
        boolean passed = channel.equals(Catalogue.MARKET);
        long base = price - discount + shipping;
        boolean taxed = !channel.equals(Catalogue.SITE) || shop.draws.chance(0.4);
        long tax = taxed ? half(base * 6, 100) : 0;
        String place = place(channel);
        long fee = fee(channel, base);
        // Who pays a small thing in cash now and then leaves the coins.
        long tip = place.equals(Catalogue.CASH) && base < 2000 && ++small % 9 == 0 ? 100 : 0;
        long due = base + (passed ? 0 : tax) + tip;
        boolean post = !channel.equals(Catalogue.STALL);
        shop.rows.add(
                "sale",
                shop.document(
                        id,
                        "",
                        shop.id(channel),
                        shop.draws.one(BUYERS),
                        post ? "ORDER-" + ++order : "",
                        usd(discount),
                        usd(shipping),
                        usd(tax),
                        passed,
                        usd(fee),
                        fee == 0 ? "" : shop.id(place),
                        post ? shop.day.plusDays(1) : shop.day,
                        tax == 0 || passed ? "" : Catalogue.COUNTY,
                        discount > 0 ? Catalogue.THANKS : "",
                        tip > 0 ? usd(tip) : ""));
        shop.taxDue += passed ? 0 : tax;
        shop.pay(place, -fee);
        payments(id, place, due);
        return passed ? 0 : tax;
    }

    private void payments(UUID id, String place, long due) {
        long byDeposit = place.equals(Catalogue.CASH) ? Math.min(deposit, due) : 0;
        long byCredit = byDeposit == 0 ? Math.min(given, due) : 0;
        int line = 0;
        if (byDeposit > 0) {
            shop.rows.add("sale_payment", id, ++line, "DEPOSIT", "", usd(byDeposit));
            deposit -= byDeposit;
        }
        if (byCredit > 0) {
            shop.rows.add("sale_payment", id, ++line, "STORE_CREDIT", "", usd(byCredit));
            given -= byCredit;
        }
        long rest = due - byDeposit - byCredit;
        boolean later = place.equals(Catalogue.CASH) && rest > 6000 && shop.draws.chance(0.25);
        if (later) {
            long half = rest / 2;
            shop.rows.add("sale_payment", id, ++line, "OWED", "", usd(half));
            owed(id, half);
            rest -= half;
        }
        if (rest > 0) {
            shop.rows.add("sale_payment", id, ++line, "PLACE", shop.id(place), usd(rest));
            shop.pay(place, rest);
        }
    }

    /** The rest of a sale, paid a fortnight later into the bank. */
    private void owed(UUID sale, long amount) {
        LocalDate today = shop.day;
        shop.day = today.plusDays(14);
        shop.rows.add(
                "payment",
                shop.document(shop.draws.id(), "", sale, "Stall visitor", shop.id(Catalogue.BANK), usd(amount)));
        shop.day = today;
        shop.pay(Catalogue.BANK, amount);
    }

    /** Somebody pays ahead for the next thing they like at the stall. */
    void takeDeposit() {
        deposit += 2000;
        shop.rows.add(
                "payment",
                shop.document(
                        shop.draws.id(),
                        "For whatever green thing comes next",
                        "",
                        "Mrs Nobody",
                        shop.id(Catalogue.CASH),
                        usd(2000)));
        shop.pay(Catalogue.CASH, 2000);
    }

    /** The latest sale comes back, and goes up again. */
    void refundWhole(boolean byCredit) {
        Sold back = latest();
        refund(back, back.price, back.tax, true, byCredit);
        if (!back.channel.equals(Catalogue.STALL)) {
            shop.rows.add(
                    "postage",
                    shop.document(
                            shop.draws.id(), "Came back", back.id, shop.id(Catalogue.CARD), usd(1150), usd(0), true));
        }
        back.offer.pieces.forEach(piece -> shop.move(piece, "READY"));
    }

    /** A little off for a scratch; the buyer keeps it. */
    void refundPart() {
        Sold scratched = latest();
        refund(scratched, scratched.price / 5, 0, false, false);
    }

    private void refund(Sold sale, long amount, long tax, boolean back, boolean byCredit) {
        UUID id = shop.draws.id();
        refunded.add(sale);
        String place = place(sale.channel);
        long feeBack = back && sale.channel.equals(Catalogue.MARKET) ? amount * 5 / 100 : 0;
        shop.rows.add(
                "refund",
                shop.document(
                        id,
                        back ? "Too large for the hall" : "Scratch on the side",
                        sale.id,
                        byCredit ? "STORE_CREDIT" : "PLACE",
                        byCredit ? "" : shop.id(place),
                        usd(0),
                        usd(tax),
                        usd(feeBack),
                        feeBack == 0 ? "" : shop.id(place)));
        shop.rows.add("refund_line", id, 1, sale.offer.pieces.get(0).id, "", "", usd(amount), back, false, "");
        shop.taxDue -= tax;
        shop.pay(place, feeBack - (byCredit ? 0 : amount + tax));
        given += byCredit ? amount + tax : 0;
    }

    private Sold latest() {
        return Objects.requireNonNull(sold.stream()
                .filter(sale -> !refunded.contains(sale) && sale.offer.pieces.size() == 1 && sale.on.isBefore(shop.day))
                .reduce((first, second) -> second)
                .orElse(null));
    }

    private static String place(String channel) {
        return channel.equals(Catalogue.SITE)
                ? Catalogue.WEB
                : channel.equals(Catalogue.MARKET) ? Catalogue.QUAY : Catalogue.CASH;
    }

    private long fee(String channel, long base) {
        boolean early = shop.day.isBefore(FEES_RISE);
        return switch (channel) {
            case Catalogue.SITE -> half(base * (early ? 29 : 32), 1000) + 30;
            case Catalogue.MARKET -> half(base * (early ? 90 : 95), 1000) + (early ? 20 : 25);
            default -> 0;
        };
    }

    /** Rounds half up. */
    private static long half(long numerator, long denominator) {
        return Math.floorDiv(2 * numerator + denominator, 2 * denominator);
    }
}
