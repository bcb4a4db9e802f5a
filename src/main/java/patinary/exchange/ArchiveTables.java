package patinary.exchange;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every file of the archive. A table stands behind those it refers to, so that rows can go in as they are read. */
final class ArchiveTables {

    /** Raised with every change of this list. */
    static final int FORMAT = 1;

    static final List<ArchiveTable> ALL = Stream.of(
                    ShopTables.ALL,
                    ThingTables.ALL,
                    HandlingTables.THINGS,
                    YearTables.THINGS,
                    DocumentTables.ALL,
                    HandlingTables.ROWS,
                    SellingTables.ALL,
                    MoneyTables.ALL,
                    ArrangementTables.ALL,
                    YearTables.YEARS,
                    SealTables.ALL,
                    SendingTables.ALL,
                    ListingTables.ALL,
                    BringingTables.ALL,
                    PhoneTables.ALL,
                    PhotoTables.ALL,
                    TaxViewTables.ALL,
                    HistoryTables.ALL)
            .flatMap(List::stream)
            .toList();

    private ArchiveTables() {}

    static Optional<ArchiveTable> ofFile(String file) {
        return ALL.stream().filter(table -> table.file().equals(file)).findFirst();
    }

    static ArchiveTable named(String name) {
        return ofFile(name + ".csv").orElseThrow(() -> new IllegalArgumentException("No table " + name));
    }
}
