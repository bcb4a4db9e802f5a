package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The files that say how a year is counted for tax, and what goes on which line. */
final class TaxViewTables {

    static final List<ArchiveTable> ALL = List.of(
            table("tax_basis")
                    .key("tax_year")
                    .column("tax_year", Type.WHOLE)
                    .words("income", "SALE_DATE", "CASH")
                    .words("supplies", "WHEN_USED", "WHEN_BOUGHT")
                    .text("note", 2000)
                    .done(),
            table("tax_mapping")
                    .key("tax_table", "tax_year", "account", "category")
                    .name("tax_table", 40)
                    .column("tax_year", Type.WHOLE)
                    .name("account", 20)
                    .text("category", 40)
                    .words("goes", "LINE", "NOWHERE", "SUPPLIED")
                    .text("meaning", 60)
                    .column("onward", Type.YES_NO)
                    .done());

    private TaxViewTables() {}
}
