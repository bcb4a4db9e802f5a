package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Objects;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Rows;

/** What the invented shop put up for sale, and what became of it. A sale has the number of its offer's first piece. */
final class SellingFiles {

    private final Facts facts;
    private final NewArchive archive;

    SellingFiles(Facts facts, NewArchive archive) {
        this.facts = facts;
        this.archive = archive;
    }

    private interface Offers {

        void on(PieceLife life, PieceLife.Offer offer);
    }

    private interface Sales {

        void on(PieceLife life, PieceLife.Offer offer, PieceLife.Sold sold);
    }

    private void eachOffer(Offers offers) {
        facts.lives().each(life -> {
            if (life.offer() != null) {
                offers.on(life, life.offer());
            }
        });
    }

    private void eachSale(Sales sales) {
        eachOffer((life, offer) -> {
            if (offer.sold() != null) {
                sales.on(life, offer, offer.sold());
            }
        });
    }

    void write() throws IOException {
        offers();
        sales();
        refunds();
        archive.table(
                "postage",
                rows -> eachSale((life, offer, sold) -> {
                    if (sold.carriage() > 0) {
                        Facts.document(
                                rows,
                                facts.id("postage", life.number()),
                                sold.day(),
                                "sale_id",
                                facts.id("sale", life.number()),
                                "place_id",
                                facts.id(Facts.BANK, 0),
                                "carriage",
                                usd(sold.carriage()),
                                "packing",
                                usd(0),
                                "back",
                                false);
                    }
                }));
    }

    private void offers() throws IOException {
        archive.table(
                "offer",
                rows -> eachOffer((life, offer) -> Facts.document(
                        rows,
                        facts.id("offer", life.number()),
                        offer.day(),
                        "title",
                        title(life),
                        "ended_on",
                        offer.ended())));
        archive.table(
                "offer_piece",
                rows -> eachOffer(
                        (life, offer) -> eachPiece(life, offer, rows, "offer_id", facts.id("offer", life.number()))));
        archive.table(
                "offer_channel",
                rows -> eachOffer((life, offer) -> offer.channels()
                        .forEach(channel -> rows.add(
                                "offer_id", facts.id("offer", life.number()),
                                "channel_id", facts.id("channel", channel.ordinal())))));
        archive.table(
                "offer_price",
                rows -> eachOffer((life, offer) -> {
                    rows.add(
                            "offer_id",
                            facts.id("offer", life.number()),
                            "valid_from",
                            offer.day(),
                            "price",
                            usd(offer.price()));
                    if (offer.lowered() != null) {
                        rows.add(
                                "offer_id", facts.id("offer", life.number()),
                                "valid_from", offer.lowered(),
                                "price", usd(offer.lowPrice()));
                    }
                }));
    }

    private void eachPiece(
            PieceLife life, PieceLife.Offer offer, Rows rows, @org.jspecify.annotations.Nullable Object... before) {
        for (int i = 0; i < (offer.together() ? 2 : 1); i++) {
            @org.jspecify.annotations.Nullable Object[] cells = java.util.Arrays.copyOf(before, before.length + 4);
            cells[before.length] = "piece_id";
            cells[before.length + 1] = facts.id("piece", life.number() + i);
            cells[before.length + 2] = "weight";
            cells[before.length + 3] = BigDecimal.ONE;
            rows.add(cells);
        }
    }

    private void sales() throws IOException {
        archive.table(
                "sale",
                rows -> eachSale((life, offer, sold) -> Facts.document(
                        rows,
                        facts.id("sale", life.number()),
                        sold.day(),
                        "channel_id",
                        facts.id("channel", sold.channel().ordinal()),
                        "discount",
                        usd(0),
                        "shipping",
                        usd(sold.shipping()),
                        "tax",
                        usd(0),
                        "tax_passed",
                        false,
                        "fee",
                        usd(sold.fee()),
                        "fee_place_id",
                        sold.fee() == 0 ? null : facts.placeOf(sold.channel()),
                        "posted_on",
                        sold.channel().posts() ? sold.day() : null)));
        archive.table(
                "sale_line",
                rows -> eachSale((life, offer, sold) -> rows.add(
                        "sale_id", facts.id("sale", life.number()),
                        "line", 1,
                        "title", title(life),
                        "quantity", BigDecimal.ONE,
                        "price", usd(sold.price()),
                        "discount", usd(0))));
        archive.table(
                "sale_piece",
                rows -> eachSale((life, offer, sold) ->
                        eachPiece(life, offer, rows, "sale_id", facts.id("sale", life.number()), "line", 1)));
        archive.table(
                "sale_payment",
                rows -> eachSale((life, offer, sold) -> rows.add(
                        "sale_id", facts.id("sale", life.number()),
                        "line", 1,
                        "way", "PLACE",
                        "place_id", facts.placeOf(sold.channel()),
                        "amount", usd(sold.total()))));
    }

    private void refunds() throws IOException {
        archive.table(
                "refund",
                rows -> eachSale((life, offer, sold) -> {
                    if (sold.refunded() != null) {
                        Facts.document(
                                rows,
                                facts.id("refund", life.number()),
                                Objects.requireNonNull(sold.refunded()),
                                "sale_id",
                                facts.id("sale", life.number()),
                                "way",
                                "PLACE",
                                "place_id",
                                facts.placeOf(sold.channel()),
                                "shipping",
                                usd(0),
                                "tax",
                                usd(0),
                                "fee_back",
                                usd(0));
                    }
                }));
        archive.table(
                "refund_line",
                rows -> eachSale((life, offer, sold) -> {
                    if (sold.refunded() == null) {
                        return;
                    }
                    long half = offer.together() ? sold.price() / 2 : sold.price();
                    line(rows, life, 1, life.number(), half);
                    if (offer.together()) {
                        line(rows, life, 2, life.number() + 1, sold.price() - half);
                    }
                }));
    }

    private void line(Rows rows, PieceLife life, int line, int piece, long amount) {
        rows.add(
                "refund_id", facts.id("refund", life.number()),
                "line", line,
                "piece_id", facts.id("piece", piece),
                "amount", usd(amount),
                "comes_back", true);
    }

    private static String title(PieceLife life) {
        return Assortment.STYLES.get(life.style()) + ": " + Assortment.KINDS.get(life.kind());
    }
}
