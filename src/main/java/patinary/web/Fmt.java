package patinary.web;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Words for values, in templates: {@code ${@fmt.money(row.total)}}. What is not known is shown as a dash.
 *
 * <p>A negative figure carries a real minus sign; what it means is said in words beside it.
 */
@Component("fmt")
public class Fmt {

    private static final String UNKNOWN = "–";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

    private final House house;

    Fmt(House house) {
        this.house = house;
    }

    /** An amount in the shop's currency. */
    public String money(@Nullable Amount amount) {
        return amount == null ? UNKNOWN : house.currency().format(amount, Locale.US);
    }

    /** An amount of whole units, without minor units behind it. */
    public String whole(@Nullable Amount amount) {
        int digits = house.currency().digits();
        String text = money(amount);
        return amount == null || digits == 0 ? text : text.substring(0, text.length() - digits - 1);
    }

    /** An amount given in minor units, as a report's row holds it. */
    public String money(@Nullable Long minor) {
        return minor == null ? UNKNOWN : money(Amount.of(minor));
    }

    /** A day, the month as a word so that day and month cannot be mixed up. */
    public String date(@Nullable LocalDate date) {
        return date == null ? UNKNOWN : DAY.format(date);
    }

    /** A moment on the shop's own clock. */
    public String moment(@Nullable Instant instant) {
        return instant == null ? UNKNOWN : MOMENT.format(instant.atZone(house.zone()));
    }

    /** A number without needless zeros. */
    public String number(@Nullable BigDecimal number) {
        if (number == null) {
            return UNKNOWN;
        }
        BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return plain.toPlainString().replace('-', '−');
    }

    /** A number and its unit. */
    public String quantity(@Nullable BigDecimal number, String unit) {
        return number == null ? UNKNOWN : number(number) + "\u00a0" + unit;
    }

    /** A rate in hundredths. */
    public String percent(@Nullable Percent percent) {
        return percent == null ? UNKNOWN : number(percent.value()) + "%";
    }

    /** Minutes of work as hours and minutes. */
    public String minutes(@Nullable Long minutes) {
        if (minutes == null) {
            return UNKNOWN;
        }
        long hours = minutes / 60;
        long rest = minutes % 60;
        return hours == 0 ? rest + "\u00a0min" : hours + "\u00a0h " + rest + "\u00a0min";
    }
}
