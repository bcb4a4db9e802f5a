package patinary.yearfolder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** The rows of one table on a sheet, and on further sheets where one cannot hold them; what is written is let go of. */
final class SheetOfRows {

    /** The cells of one column on one sheet: {@code 'name'!$K$2:$K$451}, with the sheet's own place in it. */
    record Range(String sheet, int last) {

        String of(int column) {
            String letters = letters(column);
            return "'" + sheet + "'!$" + letters + "$2:$" + letters + "$" + Math.max(last, 2);
        }

        private static String letters(int column) {
            String letter = String.valueOf((char) ('A' + column % 26));
            return column < 26 ? letter : letters(column / 26 - 1) + letter;
        }
    }

    private static final int HELD = 500;

    private final Workbook workbook;
    private final FolderTable table;
    private final String money;
    private final int digits;
    private final List<Range> ranges = new ArrayList<>();
    private Worksheet sheet;
    private int row;

    SheetOfRows(Workbook workbook, FolderTable table, ShopCurrency currency) {
        this.workbook = workbook;
        this.table = table;
        this.digits = currency.digits();
        this.money = format(currency);
        this.sheet = begin();
    }

    /** Shows all decimals of the currency. */
    static String format(ShopCurrency currency) {
        return currency.digits() == 0 ? "#,##0" : "#,##0." + "0".repeat(currency.digits());
    }

    void row(@Nullable Object... cells) {
        try {
            if (row == Worksheet.MAX_ROWS) {
                end();
                sheet = begin();
            }
            for (int i = 0; i < cells.length; i++) {
                cell(i, cells[i]);
            }
            row++;
            if (row % HELD == 0) {
                sheet.flush();
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    void end() throws IOException {
        ranges.add(new Range(sheet.getName(), row));
        sheet.finish();
    }

    FolderTable table() {
        return table;
    }

    /** The sheets of the table, with their last row. */
    List<Range> ranges() {
        return List.copyOf(ranges);
    }

    private Worksheet begin() {
        Worksheet next =
                workbook.newWorksheet(ranges.isEmpty() ? table.name() : table.name() + "-" + (ranges.size() + 1));
        for (int i = 0; i < table.columns().size(); i++) {
            next.inlineString(0, i, table.columns().get(i).name());
            next.style(0, i).bold().set();
            next.width(i, width(table.columns().get(i)));
        }
        next.freezePane(0, 1);
        row = 1;
        return next;
    }

    private static double width(Column column) {
        return switch (column.type()) {
            case TEXT -> column.name().equals("title") || column.name().equals("note") ? 32 : 16;
            default -> 13;
        };
    }

    private void cell(int column, @Nullable Object cell) {
        if (cell == null) {
            return;
        }
        if (cell instanceof Amount amount) {
            sheet.value(row, column, BigDecimal.valueOf(amount.minor(), digits));
            sheet.style(row, column).format(money).set();
        } else if (cell instanceof LocalDate day) {
            sheet.value(row, column, day);
            sheet.style(row, column).format("yyyy-mm-dd").set();
        } else if (cell instanceof Number number) {
            sheet.value(row, column, number);
        } else if (cell instanceof Boolean yes) {
            sheet.value(row, column, yes);
        } else if (!cell.toString().isEmpty()) {
            sheet.inlineString(row, column, cell.toString());
        }
    }
}
