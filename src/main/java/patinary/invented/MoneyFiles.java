package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import patinary.exchange.NewArchive;
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
                Facts.document(
                        rows,
                        facts.id("expense", number),
                        Span.FIRST.plusDays((long) number * Span.DAYS / many),
                        "category",
                        CATEGORIES.get(chance.between(0, CATEGORIES.size() - 1)),
                        "payee",
                        "Somebody (invented)",
                        "place_id",
                        facts.id(Facts.BANK, 0),
                        "amount",
                        usd(chance.between(300, 6000)));
            }
        });
        archive.table(
                "owner_money",
                rows -> Facts.document(
                        rows,
                        facts.id("owner", 0),
                        Span.FIRST,
                        "direction",
                        "IN",
                        "place_id",
                        facts.id(Facts.BANK, 0),
                        "amount",
                        usd(500_000)));
        payouts();
    }

    private void payouts() throws IOException {
        archive.table("payout", rows -> {
            for (Channel channel : Channel.values()) {
                for (int month = 0; month < Span.MONTHS; month++) {
                    long amount = facts.months().payout(channel, month);
                    if (amount > 0) {
                        Facts.document(
                                rows,
                                facts.id("payout", ChannelMonths.number(channel, month)),
                                ChannelMonths.paidOn(month),
                                "from_place_id",
                                facts.placeOf(channel),
                                "to_place_id",
                                facts.id(Facts.BANK, 0),
                                "amount",
                                usd(amount),
                                "fee",
                                usd(0));
                    }
                }
            }
        });
        archive.table(
                "payout_part",
                rows -> facts.lives().each(life -> {
                    if (life.offer() != null && life.offer().sold() != null) {
                        parts(rows, life, life.offer().sold());
                    }
                }));
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
            rows.add(
                    "payout_id", facts.id("payout", ChannelMonths.number(channel, month)),
                    "document_id", facts.id(what, life.number()),
                    "place_id", facts.placeOf(channel),
                    "amount", usd(amount));
        }
    }
}
