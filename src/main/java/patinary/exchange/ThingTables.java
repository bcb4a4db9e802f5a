package patinary.exchange;

import static patinary.exchange.TableBuilder.named;
import static patinary.exchange.TableBuilder.table;

import java.util.List;
import java.util.stream.Stream;
import patinary.measure.NamedMeasure;
import patinary.measure.Shape;

/** The files of what there is: styles and kinds, supplies, finishes, pieces, labels and packing lists. */
final class ThingTables {

    static final List<ArchiveTable> ALL = List.of(
            named("style", 120).done(),
            named("object_kind", 120)
                    .decimal("area_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .later()
                    .done(),
            named("supply_line", 120).text("maker", 120).done(),
            table("supply")
                    .key("id")
                    .key("supply_line_id", "name")
                    .id("id")
                    .ref("supply_line_id", "supply_line")
                    .name("name", 120)
                    .words("dimension", "VOLUME", "MASS", "LENGTH", "AREA", "COUNT")
                    .amount("retail_price")
                    .zeroOrMore()
                    .optional()
                    .decimal("low_quantity", 16, 14)
                    .zeroOrMore()
                    .optional()
                    .quantity("empty_grams")
                    .optional()
                    .later()
                    .quantity("grams_per_ml")
                    .optional()
                    .later()
                    .words("wear", "AT_ONCE", "BY_USE")
                    .optional()
                    .later()
                    .done(),
            measure(table("supply_pack")),
            measure(table("supply_measure")),
            table("bundle")
                    .key("id")
                    .id("id")
                    .name("name", 120)
                    .amount("price")
                    .zeroOrMore()
                    .column("removed", Type.YES_NO)
                    .done(),
            table("bundle_part")
                    .key("bundle_id", "line")
                    .key("bundle_id", "supply_id")
                    .ref("bundle_id", "bundle")
                    .line()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .done(),
            table("finish")
                    .key("id")
                    .id("id")
                    .name("name", 120)
                    .text("note", 2000)
                    .column("removed", Type.YES_NO)
                    .done(),
            finishStep(),
            table("finish_supply")
                    .key("finish_id", "line")
                    .ref("finish_id", "finish")
                    .line()
                    .column("step", Type.WHOLE)
                    .aboveZero()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .decimal("per_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .within("finish_step", "finish_id", "step")
                    .done(),
            table("supply_measure_change")
                    .key("supply_id", "name", "from_day")
                    .ref("supply_id", "supply")
                    .name("name", 60)
                    .column("from_day", Type.DATE)
                    .quantity("was_quantity")
                    .quantity("now_quantity")
                    .done(),
            table("piece")
                    .key("id")
                    .key("code")
                    .id("id")
                    .name("code", 20)
                    .text("title", 200)
                    .ref("kind_id", "object_kind")
                    .optional()
                    .ref("style_id", "style")
                    .optional()
                    .text("material", 60)
                    .decimal("area_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .text("place", 60)
                    .text("note", 2000)
                    .ref("planned_finish_id", "finish")
                    .optional()
                    .later()
                    .words("shape", Stream.of(Shape.values()).map(Shape::name).toArray(String[]::new))
                    .optional()
                    .later()
                    .name("shape_measures", 200)
                    .optional()
                    .later()
                    .rule(Rule.together("shape", "shape_measures"))
                    .done(),
            table("piece_tag")
                    .key("piece_id", "tag")
                    .ref("piece_id", "piece")
                    .name("tag", 60)
                    .done(),
            table("label_setting")
                    .key("name")
                    .name("name", 20)
                    .text("setting", 200)
                    .done(),
            labelGrid(),
            table("packing_list")
                    .key("id")
                    .id("id")
                    .name("title", 60)
                    .column("market_day", Type.DATE)
                    .ref("channel_id", "channel")
                    .optional()
                    .text("note", 1000)
                    .done(),
            table("packing_piece")
                    .key("packing_list_id", "piece_id")
                    .ref("packing_list_id", "packing_list")
                    .ref("piece_id", "piece")
                    .column("packed", Type.YES_NO)
                    .column("home", Type.YES_NO)
                    .text("place_before", 60)
                    .done());

    private ThingTables() {}

    private static ArchiveTable finishStep() {
        return table("finish_step")
                .key("finish_id", "line")
                .ref("finish_id", "finish")
                .line()
                .name("what", 500)
                .column("minutes", Type.WHOLE)
                .zeroOrMore()
                .column("wait_from", Type.WHOLE)
                .aboveZero()
                .optional()
                .column("wait_to", Type.WHOLE)
                .aboveZero()
                .optional()
                .text("wait_words", 120)
                .text("cautions", 400)
                .rule(Rule.together("wait_from", "wait_to"))
                .done();
    }

    private static ArchiveTable labelGrid() {
        return named("label_grid", 60)
                .words("paper", "LETTER", "A4", "ROLL")
                .column("grid_rows", Type.WHOLE)
                .aboveZero()
                .column("grid_columns", Type.WHOLE)
                .aboveZero()
                .decimal("left_mm", 5, 4)
                .zeroOrMore()
                .decimal("top_mm", 5, 4)
                .zeroOrMore()
                .decimal("width_mm", 5, 4)
                .aboveZero()
                .decimal("height_mm", 5, 4)
                .aboveZero()
                .decimal("across_mm", 5, 4)
                .zeroOrMore()
                .decimal("down_mm", 5, 4)
                .zeroOrMore()
                .done();
    }

    private static ArchiveTable measure(TableBuilder measure) {
        return measure.key("supply_id", "name")
                .ref("supply_id", "supply")
                .name("name", 60)
                .quantity("quantity")
                .rule(new Rule("name", "no-name", row -> NamedMeasure.isName(row.word("name"))))
                .done();
    }
}
