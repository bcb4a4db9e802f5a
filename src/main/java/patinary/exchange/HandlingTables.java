package patinary.exchange;

import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/** How supplies come, keep, are cut and are mixed: the files of sheets, labels, pots and opened containers. */
final class HandlingTables {

    /** What belongs to a supply. */
    static final List<ArchiveTable> THINGS = List.of(
            table("supply_sheet")
                    .key("supply_id")
                    .ref("supply_id", "supply")
                    .quantity("width_cm")
                    .quantity("height_cm")
                    .done(),
            table("supply_motif")
                    .key("supply_id", "name")
                    .ref("supply_id", "supply")
                    .name("name", 60)
                    .quantity("width_cm")
                    .quantity("height_cm")
                    .done(),
            table("supply_limit")
                    .key("supply_id")
                    .ref("supply_id", "supply")
                    .column("days_opened", Type.WHOLE)
                    .aboveZero()
                    .optional()
                    .column("days_mixed", Type.WHOLE)
                    .aboveZero()
                    .optional()
                    .percent("most_percent")
                    .aboveZero()
                    .optional()
                    .text("most_note", 200)
                    .done());

    /** What belongs to a document. */
    static final List<ArchiveTable> ROWS = List.of(
            linesOf("bench_entry", "bench_cut")
                    .key("bench_entry_id", "line")
                    .line()
                    .words("kind", "SIZE", "PART", "MOTIF")
                    .text("motif", 60)
                    .quantity("width_cm")
                    .optional()
                    .quantity("height_cm")
                    .optional()
                    .column("how_many", Type.WHOLE)
                    .aboveZero()
                    .within("bench_use", "bench_entry_id", "line")
                    .rule(Rule.filledWhere("width_cm", "kind", "SIZE", "MOTIF"))
                    .rule(Rule.together("width_cm", "height_cm"))
                    .done(),
            pot(),
            linesOf("bench_entry", "bench_pot_piece")
                    .key("bench_entry_id", "pot", "piece_id")
                    .column("pot", Type.WHOLE)
                    .aboveZero()
                    .ref("piece_id", "piece")
                    .weight()
                    .within("bench_pot", "bench_entry_id", "pot")
                    .done(),
            linesOf("bench_entry", "bench_pot_use")
                    .key("bench_entry_id", "line")
                    .line()
                    .column("pot", Type.WHOLE)
                    .aboveZero()
                    .within("bench_use", "bench_entry_id", "line")
                    .within("bench_pot", "bench_entry_id", "pot")
                    .done(),
            linesOf("bench_entry", "bench_use_pot")
                    .key("bench_entry_id", "line", "supply_id")
                    .line()
                    .ref("supply_id", "supply")
                    .weight()
                    .aboveZero()
                    .within("bench_use", "bench_entry_id", "line")
                    .done(),
            table("lot_date")
                    .key("document_id", "supply_id")
                    .ref("document_id", "receipt", "opening")
                    .ref("supply_id", "supply")
                    .column("opened_on", Type.DATE)
                    .optional()
                    .column("use_by", Type.DATE)
                    .optional()
                    .done());

    private HandlingTables() {}

    private static BigDecimal number(Row row, String column) {
        return (BigDecimal) Objects.requireNonNull(row.get(column));
    }

    private static ArchiveTable pot() {
        return linesOf("bench_entry", "bench_pot")
                .key("bench_entry_id", "pot")
                .column("pot", Type.WHOLE)
                .aboveZero()
                .text("name", 60)
                .column("poured_from", Type.WHOLE)
                .aboveZero()
                .optional()
                .quantity("poured")
                .zeroOrMore()
                .quantity("water")
                .zeroOrMore()
                .quantity("made")
                .quantity("rest")
                .zeroOrMore()
                .ref("kept_as", "supply")
                .optional()
                .column("use_by", Type.DATE)
                .optional()
                .rule(new Rule("poured_from", "pot-poured", row -> row.has("poured_from") != row.isZero("poured")))
                .rule(new Rule(
                        "poured_from",
                        "pot-poured",
                        row -> !row.has("poured_from") || (Integer) row.get("poured_from") < (Integer) row.get("pot")))
                .rule(new Rule("rest", "pot-rest", row -> number(row, "rest").compareTo(number(row, "made")) <= 0))
                .rule(new Rule("use_by", "pot-use-by", row -> !row.has("use_by") || row.has("kept_as")))
                .done();
    }
}
