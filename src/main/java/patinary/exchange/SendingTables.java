package patinary.exchange;

import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The files of what is sent: sizes of pieces, what carriers take, parcels, and what the mail lost. */
final class SendingTables {

    private static final int SIZE = 60;

    static final List<ArchiveTable> ALL = List.of(
            table("piece_size")
                    .key("piece_id")
                    .ref("piece_id", "piece")
                    .text("size", SIZE)
                    .quantity("weight_g")
                    .optional()
                    .done(),
            table("carrier_service")
                    .key("id")
                    .key("name")
                    .id("id")
                    .name("name", 80)
                    .ref("place_id", "money_place")
                    .done(),
            table("carrier_rate")
                    .key("service_id", "line")
                    .ref("service_id", "carrier_service")
                    .line()
                    .column("valid_from", Type.DATE)
                    .quantity("up_to_g")
                    .text("up_to_size", SIZE)
                    .amount("cost")
                    .zeroOrMore()
                    .done(),
            linesOf("sale", "sending")
                    .key("sale_id")
                    .column("picked_up", Type.YES_NO)
                    .column("packed_on", Type.DATE)
                    .optional()
                    .text("destination", 500)
                    .text("size", SIZE)
                    .quantity("weight_g")
                    .optional()
                    .ref("service_id", "carrier_service")
                    .optional()
                    .text("tracking", 120)
                    .text("sent_from", 200)
                    .later()
                    .done(),
            table("mail_loss")
                    .key("id")
                    .id("id")
                    .ref("sale_id", "sale")
                    .words("what", "LOST", "DAMAGED")
                    .column("noticed_on", Type.DATE)
                    .text("words", 1000)
                    .column("claimed_on", Type.DATE)
                    .optional()
                    .amount("claimed")
                    .aboveZero()
                    .optional()
                    .text("reference", 80)
                    .column("refused_on", Type.DATE)
                    .optional()
                    .ref("income_id", "other_income")
                    .optional()
                    .rule(Rule.together("claimed_on", "claimed"))
                    .rule(Rule.only("refused_on", "claimed_on"))
                    .done());

    private SendingTables() {}
}
