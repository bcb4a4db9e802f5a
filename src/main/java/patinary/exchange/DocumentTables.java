package patinary.exchange;

import static patinary.exchange.TableBuilder.document;
import static patinary.exchange.TableBuilder.linesOf;

import java.util.List;
import patinary.ledger.DocumentKind;

/** The files of what happens: one for each kind of document, followed by those of its lines. */
final class DocumentTables {

    private static final String[] STOCK_PLACES = {"BENCH", "SHELF"};
    private static final String[] WAYS_BACK = {"PLACE", "OWED", "STORE_CREDIT"};

    static final List<ArchiveTable> ALL = List.of(
            document("opening", DocumentKind.OPENING)
                    .decimal("odometer", 11, 1)
                    .optional()
                    .amount("last_closing")
                    .zeroOrMore()
                    .optional()
                    .done(),
            linesOf("opening", "opening_piece")
                    .key("opening_id", "piece_id")
                    .ref("piece_id", "piece")
                    .amount("cost")
                    .zeroOrMore()
                    .column("known", Type.YES_NO)
                    .done(),
            linesOf("opening", "opening_supply")
                    .key("opening_id", "line")
                    .line()
                    .ref("supply_id", "supply")
                    .words("place", STOCK_PLACES)
                    .quantity("quantity")
                    .amount("cost")
                    .zeroOrMore()
                    .column("about", Type.YES_NO)
                    .done(),
            linesOf("opening", "opening_balance")
                    .key("opening_id", "line")
                    .line()
                    .words(
                            "account",
                            "MONEY",
                            "RECEIVABLE",
                            "PAYABLE",
                            "CUSTOMER_DEPOSITS",
                            "STORE_CREDIT_GIVEN",
                            "STORE_CREDIT_HELD",
                            "SALES_TAX_DUE")
                    .ref("place_id", "money_place")
                    .optional()
                    .ref("party_id", "source")
                    .optional()
                    .text("title", 200)
                    .amount("amount")
                    .done(),
            document("trip", DocumentKind.TRIP)
                    .text("purpose", 200)
                    .text("start_place", 120)
                    .text("destination", 120)
                    .decimal("miles", 8, 1)
                    .aboveZero()
                    .column("rate", "rate_tenths", Type.RATE)
                    .zeroOrMore()
                    .ref("vehicle_id", "vehicle")
                    .optional()
                    .later()
                    .done(),
            document("receipt", DocumentKind.RECEIPT)
                    .ref("source_id", "source")
                    .optional()
                    .ref("trip_id", "trip")
                    .optional()
                    .amount("till_total")
                    .done(),
            receiptLine(),
            linesOf("receipt", "receipt_piece")
                    .key("receipt_id", "piece_id")
                    .line()
                    .ref("piece_id", "piece")
                    .weight()
                    .within("receipt_line", "receipt_id", "line")
                    .done(),
            linesOf("receipt", "receipt_charge")
                    .key("receipt_id", "line")
                    .line()
                    .words("kind", "DISCOUNT", "TAX", "SHIPPING", "PREMIUM", "FEE", "ROUNDING")
                    .text("title", 120)
                    .percent("percent")
                    .optional()
                    .amount("amount")
                    .optional()
                    .column("taxed", Type.YES_NO)
                    .column("after_tax", Type.YES_NO)
                    .rule(Rule.exactlyOne("percent", "amount"))
                    .done(),
            linesOf("receipt", "receipt_charge_line")
                    .key("receipt_id", "charge", "line")
                    .column("charge", Type.WHOLE)
                    .line()
                    .within("receipt_charge", "receipt_id", "charge")
                    .within("receipt_line", "receipt_id", "line")
                    .done(),
            payments("receipt", "receipt_payment", "PLACE", "OWED", "STORE_CREDIT", "OWNER"),
            document("supplier_return", DocumentKind.SUPPLIER_RETURN)
                    .ref("source_id", "source")
                    .optional()
                    .words("way", WAYS_BACK)
                    .ref("place_id", "money_place")
                    .optional()
                    .ref("receipt_id", "receipt", "opening")
                    .optional()
                    .amount("amount")
                    .zeroOrMore()
                    .rule(Rule.filledWhere("place_id", "way", "PLACE"))
                    .rule(Rule.filledWhere("receipt_id", "way", "OWED"))
                    .done(),
            linesOf("supplier_return", "supplier_return_piece")
                    .key("supplier_return_id", "piece_id")
                    .ref("piece_id", "piece")
                    .done(),
            linesOf("supplier_return", "supplier_return_supply")
                    .key("supplier_return_id", "line")
                    .line()
                    .ref("supply_id", "supply")
                    .words("place", STOCK_PLACES)
                    .quantity("quantity")
                    .done(),
            document("taking", DocumentKind.TAKING)
                    .ref("supply_id", "supply")
                    .quantity("quantity")
                    .column("own_use_tax", Type.YES_NO)
                    .column("at_once", Type.YES_NO)
                    .optional()
                    .later()
                    .done(),
            document("bench_entry", DocumentKind.BENCH_ENTRY)
                    .column("minutes", Type.WHOLE)
                    .zeroOrMore()
                    .text("done", 4000)
                    .ref("finish_id", "finish")
                    .optional()
                    .later()
                    .done(),
            linesOf("bench_entry", "bench_piece")
                    .key("bench_entry_id", "piece_id")
                    .ref("piece_id", "piece")
                    .column("ready", Type.YES_NO)
                    .done(),
            linesOf("bench_entry", "bench_use")
                    .key("bench_entry_id", "line")
                    .line()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .column("estimated", Type.YES_NO)
                    .quantity("tool_uses")
                    .optional()
                    .later()
                    .done(),
            linesOf("bench_entry", "bench_use_piece")
                    .key("bench_entry_id", "line", "piece_id")
                    .line()
                    .ref("piece_id", "piece")
                    .weight()
                    .within("bench_use", "bench_entry_id", "line")
                    .done(),
            linesOf("bench_entry", "bench_mishap")
                    .key("bench_entry_id", "line")
                    .line()
                    .ref("piece_id", "piece")
                    .optional()
                    .ref("supply_id", "supply")
                    .optional()
                    .text("surface", 60)
                    .text("what", 500)
                    .text("preparation", 200)
                    .later()
                    .ref("reworked_in", "bench_entry")
                    .optional()
                    .later()
                    .done(),
            document("supply_count", DocumentKind.COUNT)
                    .ref("supply_id", "supply")
                    .words("place", STOCK_PLACES)
                    .quantity("quantity")
                    .zeroOrMore()
                    .column("waste", Type.YES_NO)
                    .optional()
                    .later()
                    .quantity("step_quantity")
                    .optional()
                    .later()
                    .done(),
            document("regrouping", DocumentKind.REGROUPING).done(),
            linesOf("regrouping", "regrouping_from")
                    .key("regrouping_id", "piece_id")
                    .ref("piece_id", "piece")
                    .done(),
            linesOf("regrouping", "regrouping_to")
                    .key("regrouping_id", "piece_id")
                    .ref("piece_id", "piece")
                    .weight()
                    .done());

    private DocumentTables() {}

    private static ArchiveTable receiptLine() {
        return linesOf("receipt", "receipt_line")
                .key("receipt_id", "line")
                .line()
                .words("kind", "PIECES", "SUPPLY", "SHELF", "EXPENSE", "HOME", "CHARITY")
                .text("title", 200)
                .quantity("quantity")
                .amount("price")
                .percent("discount_percent")
                .optional()
                .amount("discount")
                .optional()
                .column("about", Type.YES_NO)
                .ref("supply_id", "supply")
                .optional()
                .quantity("content")
                .optional()
                .name("category", 40)
                .optional()
                .rule(Rule.atMostOne("discount_percent", "discount"))
                .rule(Rule.filledWhere("supply_id", "kind", "SUPPLY", "SHELF"))
                .rule(Rule.together("supply_id", "content"))
                .rule(Rule.filledWhere("category", "kind", "EXPENSE"))
                .done();
    }

    /** The ways in which a receipt or a sale was paid. */
    static ArchiveTable payments(String parent, String name, String... ways) {
        return linesOf(parent, name)
                .key(parent + "_id", "line")
                .line()
                .words("way", ways)
                .ref("place_id", "money_place")
                .optional()
                .amount("amount")
                .rule(Rule.filledWhere("place_id", "way", "PLACE"))
                .done();
    }
}
