package patinary.yearfolder;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** One column of a table: its heading, and what its cells are. */
record Column(String name, Type type) {

    /** What a cell is; a RATE is kept in tenths of a minor unit. */
    enum Type {
        TEXT,
        DAY,
        AMOUNT,
        NUMBER,
        RATE,
        YES
    }

    static Column text(String name) {
        return new Column(name, Type.TEXT);
    }

    static Column day(String name) {
        return new Column(name, Type.DAY);
    }

    static Column amount(String name) {
        return new Column(name, Type.AMOUNT);
    }

    static Column number(String name) {
        return new Column(name, Type.NUMBER);
    }

    static Column yes(String name) {
        return new Column(name, Type.YES);
    }

    /**
     * A cell as the writers take it: text, day, {@link Amount}, number, yes or no, or null for an empty one.
     *
     * @param at its place in the row, from 1
     * @param digits the decimals of the currency
     */
    @Nullable
    Object read(ResultSet row, int at, int digits) throws SQLException {
        return switch (type) {
            case TEXT -> row.getString(at);
            case DAY -> row.getObject(at, LocalDate.class);
            case NUMBER -> row.getBigDecimal(at);
            case YES -> row.getBoolean(at);
            case AMOUNT -> {
                long minor = row.getLong(at);
                yield row.wasNull() ? null : Amount.of(minor);
            }
            case RATE -> BigDecimal.valueOf(row.getLong(at), digits + 1);
        };
    }
}
