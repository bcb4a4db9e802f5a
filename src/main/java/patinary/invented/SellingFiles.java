package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.function.Supplier;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Line;
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
                        rows.add(new Line()
                                .with("id", facts.id("postage", life.number()))
                                .with("date", sold.day())
                                .with("recorded_at", Facts.evening(sold.day()))
                                .with("sale_id", facts.id("sale", life.number()))
                                .with("place_id", facts.id(Facts.BANK, 0))
                                .with("carriage", usd(sold.carriage()))
                                .with("packing", usd(0))
                                .with("back", false));
                    }
                }));
    }

    private void offers() throws IOException {
        archive.table(
                "offer",
                rows -> eachOffer((life, offer) -> rows.add(new Line()
                        .with("id", facts.id("offer", life.number()))
                        .with("date", offer.day())
                        .with("recorded_at", Facts.evening(offer.day()))
                        .with("title", title(life))
                        .with("ended_on", offer.ended()))));
        archive.table(
                "offer_piece",
                rows -> eachOffer((life, offer) -> eachPiece(
                        life, offer, rows, () -> new Line().with("offer_id", facts.id("offer", life.number())))));
        archive.table(
                "offer_channel",
                rows -> eachOffer((life, offer) -> offer.channels()
                        .forEach(channel -> rows.add(new Line()
                                .with("offer_id", facts.id("offer", life.number()))
                                .with("channel_id", facts.id("channel", channel.ordinal()))))));
        archive.table(
                "offer_price",
                rows -> eachOffer((life, offer) -> {
                    rows.add(new Line()
                            .with("offer_id", facts.id("offer", life.number()))
                            .with("valid_from", offer.day())
                            .with("price", usd(offer.price())));
                    if (offer.lowered() != null) {
                        rows.add(new Line()
                                .with("offer_id", facts.id("offer", life.number()))
                                .with("valid_from", offer.lowered())
                                .with("price", usd(offer.lowPrice())));
                    }
                }));
    }

    /** A row for each piece of an offer, all of the same weight. */
    private void eachPiece(PieceLife life, PieceLife.Offer offer, Rows rows, Supplier<Line> start) {
        for (int i = 0; i < (offer.together() ? 2 : 1); i++) {
            rows.add(start.get()
                    .with("piece_id", facts.id("piece", life.number() + i))
                    .with("weight", BigDecimal.ONE));
        }
    }

    private void sales() throws IOException {
        archive.table(
                "sale",
                rows -> eachSale((life, offer, sold) -> rows.add(new Line()
                        .with("id", facts.id("sale", life.number()))
                        .with("date", sold.day())
                        .with("recorded_at", Facts.evening(sold.day()))
                        .with("channel_id", facts.id("channel", sold.channel().ordinal()))
                        .with("discount", usd(0))
                        .with("shipping", usd(sold.shipping()))
                        .with("tax", usd(0))
                        .with("tax_passed", false)
                        .with("fee", usd(sold.fee()))
                        .with("fee_place_id", sold.fee() == 0 ? null : facts.placeOf(sold.channel()))
                        .with("posted_on", sold.channel().posts() ? sold.day() : null))));
        archive.table(
                "sale_line",
                rows -> eachSale((life, offer, sold) -> rows.add(new Line()
                        .with("sale_id", facts.id("sale", life.number()))
                        .with("line", 1)
                        .with("title", title(life))
                        .with("quantity", BigDecimal.ONE)
                        .with("price", usd(sold.price()))
                        .with("discount", usd(0)))));
        archive.table(
                "sale_piece",
                rows -> eachSale((life, offer, sold) -> eachPiece(
                        life,
                        offer,
                        rows,
                        () -> new Line()
                                .with("sale_id", facts.id("sale", life.number()))
                                .with("line", 1))));
        archive.table(
                "sale_payment",
                rows -> eachSale((life, offer, sold) -> rows.add(new Line()
                        .with("sale_id", facts.id("sale", life.number()))
                        .with("line", 1)
                        .with("way", "PLACE")
                        .with("place_id", facts.placeOf(sold.channel()))
                        .with("amount", usd(sold.total())))));
    }

    private void refunds() throws IOException {
        archive.table(
                "refund",
                rows -> eachSale((life, offer, sold) -> {
                    if (sold.refunded() != null) {
                        rows.add(new Line()
                                .with("id", facts.id("refund", life.number()))
                                .with("date", Objects.requireNonNull(sold.refunded()))
                                .with("recorded_at", Facts.evening(Objects.requireNonNull(sold.refunded())))
                                .with("sale_id", facts.id("sale", life.number()))
                                .with("way", "PLACE")
                                .with("place_id", facts.placeOf(sold.channel()))
                                .with("shipping", usd(0))
                                .with("tax", usd(0))
                                .with("fee_back", usd(0)));
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
        rows.add(new Line()
                .with("refund_id", facts.id("refund", life.number()))
                .with("line", line)
                .with("piece_id", facts.id("piece", piece))
                .with("amount", usd(amount))
                .with("comes_back", true));
    }

    private static String title(PieceLife life) {
        return Assortment.STYLES.get(life.style()) + ": " + Assortment.KINDS.get(life.kind());
    }
}
