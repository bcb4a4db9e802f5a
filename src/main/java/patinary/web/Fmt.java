package patinary.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Words for values, in templates: {@code ${@fmt.money(row.total)}}, in the shop's language and by the customs of its country.
 * What is not known is shown as a dash.
 *
 * <p>A negative figure carries a real minus sign; what it means is said in words beside it.
 */
@Component("fmt")
public class Fmt {

    private static final String UNKNOWN = "–";

    /** How one country writes in one language; made once for each, since a page shows hundreds of days and numbers. */
    private record Customs(
            DateTimeFormatter day,
            DateTimeFormatter moment,
            char decimalMark,
            String beforePercent,
            String afterPercent) {

        static Customs of(Locale locale) {
            DecimalFormat percent = (DecimalFormat) NumberFormat.getPercentInstance(locale);
            return new Customs(
                    DateTimeFormatter.ofPattern("d MMM uuuu", locale),
                    DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", locale),
                    DecimalFormatSymbols.getInstance(locale).getDecimalSeparator(),
                    percent.getPositivePrefix(),
                    percent.getPositiveSuffix());
        }
    }

    private final House house;
    private final Map<Locale, Customs> customs = new ConcurrentHashMap<>();

    Fmt(House house) {
        this.house = house;
    }

    /** An amount in the shop's currency. */
    public String money(@Nullable Amount amount) {
        return amount == null ? UNKNOWN : house.currency().format(amount, house.locale());
    }

    /** An amount of whole units, without minor units behind it. */
    public String whole(@Nullable Amount amount) {
        return amount == null ? UNKNOWN : house.currency().whole(amount, house.locale());
    }

    /** An amount given in minor units, as a report's row holds it. */
    public String money(@Nullable Long minor) {
        return minor == null ? UNKNOWN : money(Amount.of(minor));
    }

    /** A day, the month as a word so that day and month cannot be mixed up. */
    public String date(@Nullable LocalDate date) {
        return date == null ? UNKNOWN : customs().day().format(date);
    }

    /** A moment on the shop's own clock. */
    public String moment(@Nullable Instant instant) {
        return instant == null ? UNKNOWN : customs().moment().format(instant.atZone(house.zone()));
    }

    private Customs customs() {
        return customs.computeIfAbsent(house.locale(), Customs::of);
    }

    /** A number without needless zeros, with the country's decimal mark and never grouped: typed as shown, it is read as shown. */
    public String number(@Nullable BigDecimal number) {
        if (number == null) {
            return UNKNOWN;
        }
        return local(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros());
    }

    private String local(BigDecimal number) {
        return number.toPlainString().replace('.', customs().decimalMark()).replace('-', '−');
    }

    /** A number and its unit. */
    public String quantity(@Nullable BigDecimal number, String unit) {
        return number == null ? UNKNOWN : number(number) + "\u00a0" + unit;
    }

    /** A rate in hundredths, with the sign where the language puts it: 17% in English, 17 % in Spanish. */
    public String percent(@Nullable Percent percent) {
        return percent == null ? UNKNOWN : percent(percent.value());
    }

    /** A number of hundredths, in the same way. */
    public String percent(@Nullable Number hundredths) {
        return hundredths == null ? UNKNOWN : signed(number(new BigDecimal(hundredths.toString())));
    }

    /** A share that was worked out, to the places it was rounded to: one column shows 12.0% above 12.5%. */
    public String share(@Nullable Percent share) {
        return share == null ? UNKNOWN : signed(local(share.value()));
    }

    /** A rate with as many places as the longest beside it in the same column: 7.00% under 8.25%. */
    public String percent(@Nullable Percent percent, Collection<Percent> column) {
        return percent == null
                ? UNKNOWN
                : signed(local(percent.value().setScale(Percent.places(column), RoundingMode.UNNECESSARY)));
    }

    /** A ratio that was worked out, to the places it was rounded to: 0.90 under 1.53. */
    public String ratio(@Nullable BigDecimal ratio) {
        return ratio == null ? UNKNOWN : local(ratio);
    }

    private String signed(String hundredths) {
        return customs().beforePercent() + hundredths + customs().afterPercent();
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
