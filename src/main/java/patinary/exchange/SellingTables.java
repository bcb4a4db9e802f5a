package patinary.exchange;

import static patinary.exchange.TableBuilder.document;
import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.paid;
import static patinary.exchange.TableBuilder.table;

import java.util.List;
import patinary.ledger.DocumentKind;

/** The files of offers, of sales with what was paid and packed for them, and of refunds. */
final class SellingTables {

    static final List<ArchiveTable> ALL = List.of(
            document("offer", DocumentKind.OFFER)
                    .text("title", 200)
                    .column("ended_on", Type.DATE)
                    .optional()
                    .column("alike_id", Type.ID)
                    .optional()
                    .later()
                    .done(),
            linesOf("offer", "offer_piece")
                    .key("offer_id", "piece_id")
                    .ref("piece_id", "piece")
                    .weight()
                    .done(),
            linesOf("offer", "offer_channel")
                    .key("offer_id", "channel_id")
                    .ref("channel_id", "channel")
                    .done(),
            linesOf("offer", "offer_price")
                    .key("offer_id", "valid_from")
                    .column("valid_from", Type.DATE)
                    .amount("price")
                    .zeroOrMore()
                    .done(),
            linesOf("offer", "offer_pause")
                    .key("offer_id", "paused_from")
                    .column("paused_from", Type.DATE)
                    .column("paused_to", Type.DATE)
                    .optional()
                    .rule(Rule.notBefore("paused_to", "paused_from"))
                    .done(),
            linesOf("offer", "offer_taken_down")
                    .key("offer_id", "channel_id")
                    .ref("channel_id", "channel")
                    .column("ended_on", Type.DATE)
                    .column("done_on", Type.DATE)
                    .done(),
            sale(),
            linesOf("sale", "sale_line")
                    .key("sale_id", "line")
                    .line()
                    .text("title", 200)
                    .quantity("quantity")
                    .amount("price")
                    .zeroOrMore()
                    .amount("discount")
                    .zeroOrMore()
                    .ref("supply_id", "supply")
                    .optional()
                    .quantity("content")
                    .optional()
                    .ref("bundle_id", "bundle")
                    .optional()
                    .later()
                    .column("bundle_number", Type.WHOLE)
                    .aboveZero()
                    .optional()
                    .later()
                    .name("bundle_title", 120)
                    .optional()
                    .later()
                    .rule(Rule.together("supply_id", "content"))
                    .rule(Rule.together("bundle_id", "bundle_number"))
                    .rule(Rule.together("bundle_id", "bundle_title"))
                    .rule(Rule.only("bundle_id", "supply_id"))
                    .done(),
            linesOf("sale", "sale_piece")
                    .key("sale_id", "piece_id")
                    .line()
                    .ref("piece_id", "piece")
                    .weight()
                    .amount("owner")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .within("sale_line", "sale_id", "line")
                    .done(),
            linesOf("sale", "sale_undelivered")
                    .key("sale_id", "piece_id")
                    .line()
                    .ref("piece_id", "piece")
                    .weight()
                    .amount("owner")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .within("sale_line", "sale_id", "line")
                    .done(),
            DocumentTables.payments("sale", "sale_payment", "PLACE", "OWED", "DEPOSIT", "STORE_CREDIT"),
            // What is owed arises with a receipt, on the first day, or with the sale of somebody's piece.
            document("bill_paid", DocumentKind.BILL_PAID)
                    .ref("receipt_id", "receipt", "opening", "sale")
                    .optional()
                    .ref("place_id", "money_place")
                    .amount("amount")
                    .aboveZero()
                    .done(),
            linesOf("sale", "sale_wrap")
                    .key("sale_id", "line")
                    .line()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .column("estimated", Type.YES_NO)
                    .done(),
            table("parcel").key("id").key("name").id("id").name("name", 80).done(),
            table("parcel_wrap")
                    .key("parcel_id", "line")
                    .ref("parcel_id", "parcel")
                    .line()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .column("estimated", Type.YES_NO)
                    .done(),
            paid(document("payment", DocumentKind.PAYMENT)
                    .ref("sale_id", "sale", "opening")
                    .optional()
                    .text("buyer", 200)),
            refund(),
            linesOf("refund", "refund_line")
                    .key("refund_id", "line")
                    .line()
                    .ref("piece_id", "piece")
                    .optional()
                    .ref("supply_id", "supply")
                    .optional()
                    .quantity("quantity")
                    .optional()
                    .amount("amount")
                    .zeroOrMore()
                    .column("comes_back", Type.YES_NO)
                    .column("lost", Type.YES_NO)
                    .optional()
                    .later()
                    .amount("owner")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .rule(Rule.exactlyOne("piece_id", "supply_id"))
                    .rule(Rule.together("supply_id", "quantity"))
                    .rule(new Rule("lost", "back-or-lost", row -> !row.isYes("lost") || !row.isYes("comes_back")))
                    .done());

    private SellingTables() {}

    private static ArchiveTable sale() {
        return document("sale", DocumentKind.SALE)
                .ref("channel_id", "channel")
                .text("buyer", 200)
                .text("order_reference", 80)
                .amount("discount")
                .zeroOrMore()
                .amount("shipping")
                .zeroOrMore()
                .amount("tax")
                .zeroOrMore()
                .column("tax_passed", Type.YES_NO)
                .amount("fee")
                .ref("fee_place_id", "money_place")
                .optional()
                .column("posted_on", Type.DATE)
                .optional()
                .ref("tax_place_id", "tax_place")
                .optional()
                .later()
                .text("discount_code", 40)
                .later()
                .amount("tip")
                .aboveZero()
                .optional()
                .later()
                .rule(Rule.neededUnlessZero("fee_place_id", "fee"))
                .done();
    }

    private static ArchiveTable refund() {
        return document("refund", DocumentKind.REFUND)
                .ref("sale_id", "sale")
                .words("way", "PLACE", "OWED", "STORE_CREDIT")
                .ref("place_id", "money_place")
                .optional()
                .amount("shipping")
                .zeroOrMore()
                .amount("tax")
                .zeroOrMore()
                .amount("fee_back")
                .zeroOrMore()
                .ref("fee_place_id", "money_place")
                .optional()
                .rule(Rule.filledWhere("place_id", "way", "PLACE"))
                .rule(Rule.neededUnlessZero("fee_place_id", "fee_back"))
                .done();
    }
}
