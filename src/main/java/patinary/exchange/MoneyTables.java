package patinary.exchange;

import static patinary.exchange.TableBuilder.document;
import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.paid;
import static patinary.exchange.TableBuilder.table;

import java.util.List;
import patinary.ledger.DocumentKind;

/** The files of money that moves beside a sale: payouts and what they cover, costs, other income, taxes, the owner, and the seals of years. */
final class MoneyTables {

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
            paid(document("expense", DocumentKind.EXPENSE).name("category", 40).text("payee", 200)),
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
            paid(document("owner_money", DocumentKind.OWNER_MONEY).words("direction", "IN", "OUT")),
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

    private MoneyTables() {}

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
}
