package patinary.exchange;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.ShopCurrency;

/**
 * A cell of kept rows as a value, to be shown.
 *
 * @param value a text, an amount, a decimal, a whole number, a day, a moment, yes or no, or an id
 * @param form how it is written
 * @param references the tables of which one has the id that it names; empty where it names none
 */
public record CellValue(Object value, Form form, List<String> references) {

    /** What a value is, where its class does not say. */
    public enum Form {
        PLAIN,
        PERCENT,
        WORD
    }

    /** Reads a cell; nothing where this version of the program does not know it. */
    public static Optional<CellValue> of(ShopCurrency currency, String table, String column, String text) {
        return ArchiveTables.ofFile(table + ".csv")
                .flatMap(known -> known.columns().stream()
                        .filter(one -> one.name().equals(column))
                        .findFirst())
                .flatMap(known -> of(new Cells(currency), known, text));
    }

    private static Optional<CellValue> of(Cells cells, Column column, String text) {
        try {
            Object value = cells.read(column, text);
            Form form = switch (column.type()) {
                case PERCENT -> Form.PERCENT;
                case WORD -> Form.WORD;
                default -> Form.PLAIN;
            };
            return Optional.ofNullable(value).map(known -> new CellValue(known, form, column.references()));
        } catch (Cells.Unreadable unreadable) {
            return Optional.empty();
        }
    }

    static @Nullable Object read(Cells cells, ArchiveTable table, Column column, String text) {
        try {
            return cells.read(column, text);
        } catch (Cells.Unreadable unreadable) {
            throw new UnreadableContent(table.name() + "." + column.name());
        }
    }
}
