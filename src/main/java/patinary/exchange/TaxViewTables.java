package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The files that say how a year is counted for tax. */
final class TaxViewTables {

    static final List<ArchiveTable> ALL = List.of(table("tax_basis")
            .key("tax_year")
            .column("tax_year", Type.WHOLE)
            .words("income", "SALE_DATE", "CASH")
            .words("supplies", "WHEN_USED", "WHEN_BOUGHT")
            .text("note", 2000)
            .done());

    private TaxViewTables() {}
}
