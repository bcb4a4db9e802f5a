package patinary.buying;

import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the invented shop has when it goes buying. */
final class Shelf {

    static final UUID CASH = UUID.fromString("00000000-0000-4000-8000-00000000c001");
    static final UUID PAINT = UUID.fromString("00000000-0000-4000-8000-00000000c002");
    static final UUID SOURCE = UUID.fromString("00000000-0000-4000-8000-00000000c003");
    private static final UUID LINE = UUID.fromString("00000000-0000-4000-8000-00000000c004");

    private Shelf() {}

    static void fill(JdbcClient jdbc) {
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0)")
                .param(CASH)
                .update();
        jdbc.sql(
                        "insert into source (id, name, note, resale_certificate, version) values (?, 'Hill Road barn', '', '', 0)")
                .param(SOURCE)
                .update();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Chalk colors', 'Invented', 0)")
                .param(LINE)
                .update();
        jdbc.sql(
                        "insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, 'White', 'VOLUME', 0)")
                .params(PAINT, LINE)
                .update();
        jdbc.sql("insert into supply_pack (supply_id, name, quantity) values (?, 'jar', 250)")
                .param(PAINT)
                .update();
    }
}
