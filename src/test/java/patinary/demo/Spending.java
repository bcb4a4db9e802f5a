package patinary.demo;

import static patinary.demo.Draws.usd;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;

/** Everything else that moves money: costs of the shop, other income, tax paid over, money in and out. */
final class Spending {

    /** What the invented county lets a seller keep, and from which tax on. */
    private static final long ALLOWANCE = 150;

    private static final long ALLOWED_FROM = 10000;

    private final State shop;

    Spending(State shop) {
        this.shop = shop;
    }

    void today() {
        if (shop.isFirstOfMonth()) {
            settleTheRent(expense("booth_rent", "Market hall (invented)", Catalogue.RENT));
            expense("software", "Web host (invented)", 1400);
            if (shop.day.getMonthValue() % 3 == 1) {
                expense("insurance", "Mutual cover (invented)", 6200);
                payTax();
            }
            if (shop.day.getMonthValue() % 4 == 2) {
                expense("small_tools", "Tool corner (invented)", shop.draws.between(900, 3900));
            }
        }
        if (shop.day.getDayOfMonth() == 20) {
            payOut(Catalogue.WEB, 0);
            payOut(Catalogue.QUAY, 25);
            income("videos", "Video page (invented)", shop.draws.between(900, 4200));
            if (shop.day.getMonthValue() % 3 == 0) {
                income("lessons", "Evening class (invented)", 12000);
            }
        }
        if (shop.day.getDayOfMonth() == 26) {
            bankTheCash();
            settleTheCard();
            drawMoney();
        }
    }

    /** Counts the cash box after a market day; what is over, or short below zero, has no explanation. Draws no chance. */
    void countTheCash(String note, long over) {
        UUID id = UUID.nameUUIDFromBytes(("count of " + shop.day).getBytes(StandardCharsets.UTF_8));
        shop.pay(Catalogue.CASH, over);
        shop.rows.add(
                "till_count",
                id,
                shop.day,
                note,
                shop.day + "T21:30:00Z",
                shop.id(Catalogue.CASH),
                usd(shop.at(Catalogue.CASH)));
    }

    private UUID expense(String category, String payee, long cents) {
        UUID id = shop.draws.id();
        shop.rows.add("expense", shop.document(id, "", category, payee, shop.id(Catalogue.BANK), usd(cents)));
        shop.pay(Catalogue.BANK, -cents);
        return id;
    }

    /** The month's rent of the stall is settled by this expense. Draws no chance. */
    private void settleTheRent(UUID expense) {
        shop.rows.add(
                "channel_charge",
                UUID.nameUUIDFromBytes(("rent of " + shop.day).getBytes(StandardCharsets.UTF_8)),
                shop.id(Catalogue.STALL),
                "",
                shop.day.withDayOfMonth(1),
                expense);
    }

    private void income(String category, String payer, long cents) {
        shop.rows.add(
                "other_income",
                shop.document(shop.draws.id(), "", category, payer, shop.id(Catalogue.BANK), usd(cents), ""));
        shop.pay(Catalogue.BANK, cents);
    }

    private void payTax() {
        if (shop.taxDue > 0) {
            long kept = shop.taxDue > ALLOWED_FROM ? ALLOWANCE : 0;
            LocalDate from = shop.day.minusMonths(3);
            LocalDate to = shop.day.minusDays(1);
            boolean own = !from.isBefore(State.FIRST);
            shop.rows.add(
                    "sales_tax_paid",
                    shop.document(
                            shop.draws.id(),
                            "",
                            "Quarter up to " + to,
                            shop.id(Catalogue.BANK),
                            usd(shop.taxDue - kept),
                            own ? Catalogue.COUNTY : "",
                            own ? from : "",
                            own ? to : "",
                            kept == 0 ? "" : usd(kept)));
            if (own) {
                shop.rows.add("sales_tax_filed", Catalogue.COUNTY, from, to, shop.day);
            }
            shop.pay(Catalogue.BANK, kept - shop.taxDue);
            shop.taxDue = 0;
        }
    }

    private void payOut(String from, long fee) {
        long amount = shop.at(from) - fee;
        if (amount > 500) {
            shop.rows.add(
                    "payout",
                    shop.document(shop.draws.id(), "", shop.id(from), shop.id(Catalogue.BANK), usd(amount), usd(fee)));
            shop.pay(from, -amount - fee);
            shop.pay(Catalogue.BANK, amount);
        }
    }

    private void bankTheCash() {
        long amount = (shop.at(Catalogue.CASH) - 10000) / 2000 * 2000;
        if (amount > 0) {
            move(Catalogue.CASH, Catalogue.BANK, amount);
        }
    }

    private void settleTheCard() {
        long owed = -shop.at(Catalogue.CARD);
        if (owed > 0) {
            move(Catalogue.BANK, Catalogue.CARD, owed);
        }
    }

    private void move(String from, String to, long amount) {
        shop.rows.add("money_move", shop.document(shop.draws.id(), "", shop.id(from), shop.id(to), usd(amount)));
        shop.pay(from, -amount);
        shop.pay(to, amount);
    }

    private void drawMoney() {
        long bank = shop.at(Catalogue.BANK);
        if (bank < 60000) {
            owner("IN", 50000);
        } else if (bank > 200000) {
            owner("OUT", 30000);
        }
    }

    private void owner(String direction, long cents) {
        shop.rows.add(
                "owner_money", shop.document(shop.draws.id(), "", direction, shop.id(Catalogue.BANK), usd(cents)));
        shop.pay(Catalogue.BANK, direction.equals("IN") ? cents : -cents);
    }
}
