package patinary.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import patinary.money.ShopCurrency;

/** Finds out the archive's currency, without which no amount can be read. */
final class ShopFile {

    private static final ArchiveTable TABLE = ArchiveTables.named(ShopTables.SHOP);

    private final ArchiveSource source;
    private final ErrorList errors = new ErrorList();

    ShopFile(ArchiveSource source) {
        this.source = source;
    }

    /** @throws ArchiveRefused where there is no one shop with a known currency: the rest could only be misread */
    ShopCurrency currency() throws IOException {
        if (!source.names().contains(TABLE.file())) {
            throw new ArchiveRefused(ArchiveError.ofFile(TABLE.file(), "no-shop"));
        }
        List<String> codes = new ArrayList<>();
        List<String> names = TABLE.columns().stream().map(Column::name).toList();
        int position = TABLE.position("currency");
        new CsvFile(source, errors)
                .read(TABLE.file(), names, TABLE.later(), (line, cells) -> codes.add(cells.get(position)));
        errors.refuseIfAny();
        if (codes.size() != 1) {
            throw new ArchiveRefused(ArchiveError.ofFile(TABLE.file(), "one-shop"));
        }
        try {
            return ShopCurrency.ofCode(codes.get(0));
        } catch (IllegalArgumentException unknown) {
            throw new ArchiveRefused(ArchiveError.of(TABLE.file(), 2, "currency", codes.get(0), "currency"));
        }
    }
}
