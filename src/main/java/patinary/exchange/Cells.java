package patinary.exchange;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;
import patinary.money.UnreadableAmount;

/** Reads and writes single cells, strictly: what is read is written again as it was, but for zeros behind a decimal. */
final class Cells {

    /** Why a cell cannot be read: the last word of a message. */
    static final class Unreadable extends Exception {

        private static final long serialVersionUID = 1L;
        private final String reason;

        Unreadable(String reason) {
            super(reason);
            this.reason = reason;
        }

        String reason() {
            return reason;
        }
    }

    private static final Pattern NUMBER = Pattern.compile("(-?)(0|[1-9][0-9]*)(?:\\.([0-9]+))?");
    private static final Pattern WHOLE = Pattern.compile("-?(0|[1-9][0-9]{0,8})");
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern MOMENT = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}(\\.[0-9]{1,6})?Z");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-([0-9a-f]{4}-){3}[0-9a-f]{12}");

    private final ShopCurrency currency;

    Cells(ShopCurrency currency) {
        this.currency = currency;
    }

    ShopCurrency currency() {
        return currency;
    }

    /** The cell's value; null where it is empty and may be. */
    @Nullable
    Object read(Column column, String cell) throws Unreadable {
        if (cell.isEmpty()) {
            return switch (column.presence()) {
                case REQUIRED -> throw new Unreadable("required");
                case OPTIONAL -> null;
                case MAY_BE_BLANK -> "";
            };
        }
        try {
            return limited(column, filled(column, cell));
        } catch (UnreadableAmount | DateTimeException | ArithmeticException malformed) {
            throw new Unreadable(reason(column));
        }
    }

    String write(Column column, @Nullable Object value) {
        if (value == null) {
            return "";
        }
        return switch (column.type()) {
            case TEXT -> SafeText.guard((String) value);
            case AMOUNT -> currency.plain((Amount) value);
            case RATE -> ((BigDecimal) value).toPlainString();
            case DECIMAL, PERCENT -> plain((BigDecimal) value);
            case YES_NO -> (Boolean) value ? "yes" : "no";
            case WHOLE, DATE, MOMENT, ID, WORD -> value.toString();
        };
    }

    private Object filled(Column column, String cell) throws Unreadable {
        return switch (column.type()) {
            case TEXT -> text(column, cell);
            case AMOUNT -> currency.parsePlain(cell);
            case RATE -> rate(cell);
            case DECIMAL, PERCENT -> decimal(column, cell);
            case WHOLE -> Integer.valueOf(matching(column, WHOLE, cell));
            case DATE -> LocalDate.parse(matching(column, DATE, cell));
            case MOMENT -> Instant.parse(matching(column, MOMENT, cell));
            case YES_NO -> yesOrNo(column, cell);
            case ID -> UUID.fromString(matching(column, ID, cell));
            case WORD -> word(column, cell);
        };
    }

    private static String text(Column column, String cell) throws Unreadable {
        String text = SafeText.restore(cell);
        if (text.length() > column.size()) {
            throw new Unreadable("too-long");
        }
        if (text.indexOf('\0') >= 0) {
            throw new Unreadable("null-sign");
        }
        return text;
    }

    private BigDecimal rate(String cell) throws Unreadable {
        var matcher = NUMBER.matcher(cell);
        int scale = currency.digits() + 1;
        if (!matcher.matches() || matcher.group(2).length() > 6 || digits(matcher.group(3)) != scale) {
            throw new Unreadable("rate");
        }
        return new BigDecimal(cell);
    }

    private static BigDecimal decimal(Column column, String cell) throws Unreadable {
        var matcher = NUMBER.matcher(cell);
        if (!matcher.matches()
                || matcher.group(2).length() > column.size()
                || digits(matcher.group(3)) > column.scale()) {
            throw new Unreadable(reason(column));
        }
        return new BigDecimal(cell);
    }

    private static int digits(@Nullable String decimals) {
        return decimals == null ? 0 : decimals.length();
    }

    private static String matching(Column column, Pattern pattern, String cell) throws Unreadable {
        if (!pattern.matcher(cell).matches()) {
            throw new Unreadable(reason(column));
        }
        return cell;
    }

    private static boolean yesOrNo(Column column, String cell) throws Unreadable {
        if (!cell.equals("yes") && !cell.equals("no")) {
            throw new Unreadable(reason(column));
        }
        return cell.equals("yes");
    }

    private static String word(Column column, String cell) throws Unreadable {
        if (!column.words().contains(cell)) {
            throw new Unreadable(reason(column));
        }
        return cell;
    }

    private static Object limited(Column column, Object value) throws Unreadable {
        int signum = switch (column.limit()) {
            case NONE -> 1;
            case ZERO_OR_MORE, ABOVE_ZERO -> signum(value);
        };
        if (signum < 0 || signum == 0 && column.limit() == Column.Limit.ABOVE_ZERO) {
            throw new Unreadable(column.limit() == Column.Limit.ABOVE_ZERO ? "above-zero" : "below-zero");
        }
        return value;
    }

    private static int signum(Object value) {
        if (value instanceof Amount amount) {
            return amount.signum();
        }
        return value instanceof BigDecimal decimal ? decimal.signum() : Integer.signum((Integer) value);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static String reason(Column column) {
        return column.type().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
