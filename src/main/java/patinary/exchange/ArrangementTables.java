package patinary.exchange;

import static patinary.exchange.TableBuilder.document;
import static patinary.exchange.TableBuilder.table;

import java.util.List;
import patinary.ledger.DocumentKind;

/** The files of what is agreed with other people. */
final class ArrangementTables {

    static final List<ArchiveTable> ALL = List.of(
            document("supply_gift", DocumentKind.SUPPLY_GIFT)
                    .text("giver", 200)
                    .ref("supply_id", "supply")
                    .quantity("quantity")
                    .amount("value")
                    .zeroOrMore()
                    .column("for_work", Type.YES_NO)
                    .done(),
            table("channel_away").key("channel_id").ref("channel_id", "channel").done(),
            table("piece_owner")
                    .key("piece_id")
                    .ref("piece_id", "piece")
                    .words("arrangement", "COMMISSION", "CONSIGNED")
                    .name("owner", 200)
                    .column("since", Type.DATE)
                    .amount("price")
                    .zeroOrMore()
                    .optional()
                    .column("due_on", Type.DATE)
                    .optional()
                    .percent("share_percent")
                    .zeroOrMore()
                    .optional()
                    .amount("share")
                    .zeroOrMore()
                    .optional()
                    .text("note", 2000)
                    .rule(Rule.atMostOne("share_percent", "share"))
                    .done());

    private ArrangementTables() {}
}
