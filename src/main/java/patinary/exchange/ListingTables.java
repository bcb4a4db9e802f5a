package patinary.exchange;

import static patinary.exchange.TableBuilder.linesOf;
import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The files of the texts of offers: patterns, edited texts, and what is said of care. */
final class ListingTables {

    static final List<ArchiveTable> ALL = List.of(
            table("listing_pattern")
                    .key("id")
                    .key("name")
                    .id("id")
                    .name("name", 80)
                    .ref("channel_id", "channel")
                    .optional()
                    .name("title", 300)
                    .name("body", 4000)
                    .done(),
            linesOf("offer", "listing_text")
                    .key("offer_id", "pattern_id")
                    .ref("pattern_id", "listing_pattern")
                    .name("title", 300)
                    .name("body", 8000)
                    .done(),
            table("care_word")
                    .key("care_id")
                    .name("care_id", 20)
                    .text("words", 400)
                    .column("left_out", Type.YES_NO)
                    .rule(new Rule(
                            "words",
                            "needed",
                            row -> Boolean.TRUE.equals(row.get("left_out"))
                                    || !String.valueOf(row.get("words")).isBlank()))
                    .done(),
            table("supply_care")
                    .key("id")
                    .id("id")
                    .ref("supply_id", "supply")
                    .optional()
                    .ref("supply_line_id", "supply_line")
                    .optional()
                    .name("words", 400)
                    .rule(Rule.exactlyOne("supply_id", "supply_line_id"))
                    .done());

    private ListingTables() {}
}
