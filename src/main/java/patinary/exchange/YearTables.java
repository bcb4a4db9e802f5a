package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The files of what a year asks for beside its documents. */
final class YearTables {

    /** What trips name; they stand before the documents. */
    static final List<ArchiveTable> THINGS = List.of(
            table("vehicle")
                    .key("id")
                    .key("name")
                    .id("id")
                    .name("name", 80)
                    .column("in_service", Type.DATE)
                    .optional()
                    .text("note", 2000)
                    .done(),
            table("vehicle_year")
                    .key("vehicle_id", "tax_year")
                    .ref("vehicle_id", "vehicle")
                    .column("tax_year", Type.WHOLE)
                    .aboveZero()
                    .decimal("start_reading", 8, 1)
                    .zeroOrMore()
                    .optional()
                    .decimal("end_reading", 8, 1)
                    .zeroOrMore()
                    .optional()
                    .decimal("commuting_miles", 8, 1)
                    .zeroOrMore()
                    .optional()
                    .rule(Rule.notLess("end_reading", "start_reading"))
                    .done(),
            table("saved_way")
                    .key("id")
                    .id("id")
                    .name("start_place", 120)
                    .name("destination", 120)
                    .name("purpose", 200)
                    .decimal("miles_one_way", 8, 1)
                    .aboveZero()
                    .done());

    /** What she says of a year. */
    static final List<ArchiveTable> YEARS = List.of(
            table("home_use")
                    .key("tax_year")
                    .column("tax_year", Type.WHOLE)
                    .aboveZero()
                    .decimal("square_feet", 7, 2)
                    .aboveZero()
                    .column("months", Type.WHOLE)
                    .aboveZero()
                    .text("note", 2000)
                    .done(),
            table("set_aside_year")
                    .key("tax_year")
                    .column("tax_year", Type.WHOLE)
                    .aboveZero()
                    .percent("income_percent")
                    .zeroOrMore()
                    .percent("state_percent")
                    .zeroOrMore()
                    .done(),
            table("tax_payment")
                    .key("id")
                    .id("id")
                    .column("tax_year", Type.WHOLE)
                    .aboveZero()
                    .column("paid_on", Type.DATE)
                    .amount("amount")
                    .aboveZero()
                    .text("note", 500)
                    .done());

    private YearTables() {}
}
