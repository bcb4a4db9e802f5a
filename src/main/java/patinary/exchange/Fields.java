package patinary.exchange;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Carries values between the database's fields and {@link Cells}. */
final class Fields {

    /** The books keep the rate for a mile in tenths of a minor unit. */
    private final int rateDigits;

    Fields(ShopCurrency currency) {
        rateDigits = currency.digits() + 1;
    }

    @Nullable
    Object get(ResultSet row, Column column) throws SQLException {
        String field = column.field();
        Object value = switch (column.type()) {
            case TEXT, WORD -> row.getString(field);
            case AMOUNT -> Amount.of(row.getLong(field));
            case RATE -> BigDecimal.valueOf(row.getLong(field), rateDigits);
            case DECIMAL, PERCENT -> row.getBigDecimal(field);
            case WHOLE -> row.getInt(field);
            case DATE -> row.getObject(field, LocalDate.class);
            case MOMENT -> moment(row.getObject(field, OffsetDateTime.class));
            case YES_NO -> row.getBoolean(field);
            case ID -> row.getObject(field, UUID.class);
        };
        return row.wasNull() ? null : value;
    }

    private static @Nullable Instant moment(@Nullable OffsetDateTime stored) {
        return stored == null ? null : stored.toInstant();
    }

    void set(PreparedStatement statement, int index, Column column, @Nullable Object value) throws SQLException {
        statement.setObject(index, stored(column, value));
    }

    /** A value as the database takes it. */
    @Nullable
    Object stored(Column column, @Nullable Object value) {
        if (value instanceof Amount amount) {
            return amount.minor();
        } else if (value instanceof Instant moment) {
            return moment.atOffset(ZoneOffset.UTC);
        } else if (value instanceof BigDecimal rate && column.type() == Type.RATE) {
            return rate.movePointRight(rateDigits).longValueExact();
        }
        return value;
    }
}
