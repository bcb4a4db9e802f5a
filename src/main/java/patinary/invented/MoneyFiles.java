package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Line;
import patinary.exchange.NewArchive.Rows;

/** What went through the accounts of the invented shop beside buying and selling. */
final class MoneyFiles {

    private static final int PIECES_TO_AN_EXPENSE = 20;
    private static final List<String> CATEGORIES = List.of("small_tools", "advertising", "office", "packaging");

    private final Facts facts;
    private final NewArchive archive;

    MoneyFiles(Facts facts, NewArchive archive) {
        this.facts = facts;
        this.archive = archive;
    }

    void write() throws IOException {
        archive.table("expense", rows -> {
            int many = facts.lives().pieces() / PIECES_TO_AN_EXPENSE;
            for (int number = 0; number < many; number++) {
                Chance chance = new Chance(facts.seed(), "expense", number);
                rows.add(new Line()
                        .with("id", facts.id("expense", number))
                        .with("date", Span.FIRST.plusDays((long) number * Span.DAYS / many))
                        .with("recorded_at", Facts.evening(Span.FIRST.plusDays((long) number * Span.DAYS / many)))
                        .with("category", CATEGORIES.get(chance.between(0, CATEGORIES.size() - 1)))
                        .with("payee", "Somebody (invented)")
                        .with("place_id", facts.id(Facts.BANK, 0))
                        .with("amount", usd(chance.between(300, 6000))));
            }
        });
        archive.table(
                "owner_money",
                rows -> rows.add(new Line()
                        .with("id", facts.id("owner", 0))
                        .with("date", Span.FIRST)
                        .with("recorded_at", Facts.evening(Span.FIRST))
                        .with("direction", "IN")
                        .with("place_id", facts.id(Facts.BANK, 0))
                        .with("amount", usd(500_000))));
        payouts();
    }

    private void payouts() throws IOException {
        archive.table(
                "payout",
                rows -> each((channel, month, amount) -> rows.add(new Line()
                        .with("id", facts.id("payout", ChannelMonths.number(channel, month)))
                        .with("date", ChannelMonths.paidOn(month))
                        .with("recorded_at", Facts.evening(ChannelMonths.paidOn(month)))
                        .with("from_place_id", facts.placeOf(channel))
                        .with("to_place_id", facts.id(Facts.BANK, 0))
                        .with("amount", usd(amount))
                        .with("fee", usd(0)))));
        archive.table(
                "payout_cover",
                rows -> each((channel, month, amount) -> rows.add(new Line()
                        .with("payout_id", facts.id("payout", ChannelMonths.number(channel, month)))
                        .with("said_on", ChannelMonths.paidOn(month))
                        .with("total", usd(amount)))));
        archive.table(
                "payout_part",
                rows -> facts.lives().each(life -> {
                    if (life.offer() != null && life.offer().sold() != null) {
                        parts(rows, life, life.offer().sold());
                    }
                }));
    }

    private interface Payouts {

        void on(Channel channel, int month, long amount);
    }

    private void each(Payouts payouts) {
        for (Channel channel : Channel.values()) {
            for (int month = 0; month < Span.MONTHS; month++) {
                long amount = facts.months().payout(channel, month);
                if (amount > 0) {
                    payouts.on(channel, month, amount);
                }
            }
        }
    }

    private void parts(Rows rows, PieceLife life, PieceLife.Sold sold) {
        part(rows, sold.channel(), Span.month(sold.day()), "sale", life, ChannelMonths.kept(sold));
        if (sold.refunded() != null) {
            int month = Span.month(Objects.requireNonNull(sold.refunded()));
            part(rows, sold.channel(), month, "refund", life, -sold.price());
        }
    }

    private void part(Rows rows, Channel channel, int month, String what, PieceLife life, long amount) {
        if (facts.months().payout(channel, month) > 0) {
            rows.add(new Line()
                    .with("payout_id", facts.id("payout", ChannelMonths.number(channel, month)))
                    .with("document_id", facts.id(what, life.number()))
                    .with("place_id", facts.placeOf(channel))
                    .with("amount", usd(amount)));
        }
    }
}
