package patinary.exchange;

import static patinary.exchange.TableBuilder.document;
import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.table;

import java.util.List;
import patinary.ledger.DocumentKind;

/** The files of offers, sales, other money in and out, and the seals of years. */
final class SellingTables {

    /** Every document that can touch a money place. */
    private static final String[] MOVES_MONEY = {
        "opening",
        "receipt",
        "supplier_return",
        "sale",
        "refund",
        "payment",
        "payout",
        "postage",
        "expense",
        "other_income",
        "sales_tax_paid",
        "owner_money",
        "money_move",
        "bill_paid",
        "till_count"
    };

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
            place(document("payment", DocumentKind.PAYMENT)
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
                    .done(),
            document("payout", DocumentKind.PAYOUT)
                    .ref("from_place_id", "money_place")
                    .ref("to_place_id", "money_place")
                    .amount("amount")
                    .zeroOrMore()
                    .amount("fee")
                    .zeroOrMore()
                    .rule(Rule.different("from_place_id", "to_place_id"))
                    .done(),
            table("payout_cover")
                    .key("payout_id")
                    .ref("payout_id", "payout")
                    .column("said_on", Type.DATE)
                    .amount("total")
                    .done(),
            document("postage", DocumentKind.POSTAGE)
                    .ref("sale_id", "sale")
                    .optional()
                    .ref("place_id", "money_place")
                    .amount("carriage")
                    .zeroOrMore()
                    .amount("packing")
                    .zeroOrMore()
                    .column("back", Type.YES_NO)
                    .done(),
            place(document("expense", DocumentKind.EXPENSE).name("category", 40).text("payee", 200)),
            table("channel_charge")
                    .key("id")
                    .id("id")
                    .ref("channel_id", "channel")
                    .ref("offer_id", "offer")
                    .optional()
                    .column("for_month", Type.DATE)
                    .optional()
                    .ref("expense_id", "expense")
                    .optional()
                    .rule(Rule.exactlyOne("offer_id", "for_month"))
                    .done(),
            document("other_income", DocumentKind.OTHER_INCOME)
                    .name("category", 40)
                    .text("payer", 200)
                    .ref("place_id", "money_place")
                    .amount("amount")
                    .aboveZero()
                    .amount("fee")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .done(),
            salesTaxPaid(),
            salesTaxFiled(),
            place(document("owner_money", DocumentKind.OWNER_MONEY).words("direction", "IN", "OUT")),
            document("money_move", DocumentKind.MONEY_MOVE)
                    .ref("from_place_id", "money_place")
                    .ref("to_place_id", "money_place")
                    .amount("amount")
                    .aboveZero()
                    .rule(Rule.different("from_place_id", "to_place_id"))
                    .done(),
            document("letting_go", DocumentKind.LETTING_GO)
                    .ref("piece_id", "piece")
                    .words("reason", "BROKEN", "GIVEN_AWAY", "KEPT", "TO_OWNER")
                    .done(),
            document("year_seal", DocumentKind.YEAR_SEAL)
                    .key("tax_year")
                    .column("tax_year", Type.WHOLE)
                    .text("postings_hash", 64)
                    .column("calculation_version", Type.WHOLE)
                    .done(),
            linesOf("year_seal", "year_seal_open")
                    .key("year_seal_id", "item")
                    .name("item", 20)
                    .column("how_many", Type.WHOLE)
                    .aboveZero()
                    .amount("amount")
                    .optional()
                    .done(),
            table("seal_taken_off")
                    .key("id")
                    .id("id")
                    .column("tax_year", Type.WHOLE)
                    .column("sealed_at", Type.MOMENT)
                    .text("postings_hash", 64)
                    .column("calculation_version", Type.WHOLE)
                    .column("taken_off_at", Type.MOMENT)
                    .name("taken_off_by", 60)
                    .name("reason", 2000)
                    .done(),
            document("till_count", DocumentKind.TILL_COUNT)
                    .ref("place_id", "money_place")
                    .amount("counted")
                    .zeroOrMore()
                    .done(),
            table("payout_part")
                    .key("payout_id", "document_id")
                    .key("document_id", "place_id")
                    .ref("payout_id", "payout")
                    .within("payout_cover", "payout_id")
                    .ref("document_id", MOVES_MONEY)
                    .ref("place_id", "money_place")
                    .amount("amount")
                    .done(),
            table("gross_reported")
                    .key("id")
                    .key("place_id", "covers_from", "covers_to")
                    .id("id")
                    .ref("place_id", "money_place")
                    .column("covers_from", Type.DATE)
                    .column("covers_to", Type.DATE)
                    .rule(Rule.notBefore("covers_to", "covers_from"))
                    .amount("amount")
                    .zeroOrMore()
                    .column("with_passed_tax", Type.YES_NO)
                    .text("note", 2000)
                    .done(),
            table("gross_other_side")
                    .key("gross_id", "document_id")
                    .ref("gross_id", "gross_reported")
                    .ref("document_id", "sale", "payment")
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

    private static ArchiveTable salesTaxPaid() {
        return document("sales_tax_paid", DocumentKind.SALES_TAX_PAID)
                .text("period", 40)
                .ref("place_id", "money_place")
                .amount("amount")
                .aboveZero()
                .ref("tax_place_id", "tax_place")
                .optional()
                .later()
                .column("covers_from", Type.DATE)
                .optional()
                .later()
                .column("covers_to", Type.DATE)
                .optional()
                .later()
                .amount("allowance")
                .aboveZero()
                .optional()
                .later()
                .rule(Rule.together("covers_from", "covers_to"))
                .rule(Rule.notBefore("covers_to", "covers_from"))
                .done();
    }

    private static ArchiveTable salesTaxFiled() {
        return table("sales_tax_filed")
                .key("tax_place_id", "covers_from", "covers_to")
                .ref("tax_place_id", "tax_place")
                .column("covers_from", Type.DATE)
                .column("covers_to", Type.DATE)
                .rule(Rule.notBefore("covers_to", "covers_from"))
                .column("filed_on", Type.DATE)
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

    private static ArchiveTable place(TableBuilder document) {
        return document.ref("place_id", "money_place")
                .amount("amount")
                .aboveZero()
                .done();
    }
}
