package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/**
 * Saved mappings of files of sales, and which file each sale came from, so that it can be taken back in a shop brought back.
 * Files that still wait are not carried: nothing of them is in the books.
 */
final class BringingTables {

    static final List<ArchiveTable> ALL = List.of(
            table("sales_mapping")
                    .key("id")
                    .key("name")
                    .id("id")
                    .name("name", 80)
                    .text("header_key", 64)
                    .words("encoding", "UTF_8", "UTF_16LE", "UTF_16BE", "WINDOWS_1252", "ISO_8859_1")
                    .words("delimiter", "COMMA", "SEMICOLON", "TAB", "PIPE")
                    .column("lead_in", Type.WHOLE)
                    .zeroOrMore()
                    .column("has_header", Type.YES_NO)
                    .words("date_form", "YEAR_MONTH_DAY", "DAY_MONTH_YEAR", "MONTH_DAY_YEAR", "MONTH_AS_WORD")
                    .words("number_form", "POINT", "COMMA")
                    .column("each_row", Type.YES_NO)
                    .column("sent", Type.YES_NO)
                    .ref("channel_id", "channel")
                    .done(),
            table("sales_mapping_column")
                    .key("mapping_id", "meaning")
                    .ref("mapping_id", "sales_mapping")
                    .words(
                            "meaning",
                            "ORDER",
                            "DATE",
                            "TITLE",
                            "CODE",
                            "QUANTITY",
                            "PRICE",
                            "LINE_TOTAL",
                            "LINE_DISCOUNT",
                            "ORDER_DISCOUNT",
                            "SHIPPING",
                            "TAX",
                            "FEE",
                            "TOTAL",
                            "BUYER",
                            "TAX_PLACE")
                    .column("place", Type.WHOLE)
                    .zeroOrMore()
                    .done(),
            table("sales_import")
                    .key("id")
                    .id("id")
                    .text("file_name", 200)
                    .ref("channel_id", "channel")
                    .column("brought_in_at", Type.MOMENT)
                    .column("sales", Type.WHOLE)
                    .aboveZero()
                    .column("undone_at", Type.MOMENT)
                    .optional()
                    .done(),
            table("sales_import_sale")
                    .key("sale_id")
                    .ref("import_id", "sales_import")
                    .ref("sale_id", "sale")
                    .done());

    private BringingTables() {}
}
