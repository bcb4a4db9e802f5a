package patinary.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;

/**
 * The shop's one currency: reads amounts people type, and writes amounts for pages and for files.
 *
 * <p>How many minor digits a currency has (ISO 4217: USD 2, JPY 0, KWD 3, CLF 4) is Joda-Money's data. Reading and plain
 * writing do not depend on the machine's locale.
 */
public final class ShopCurrency {

    /** U+2212, the minus sign: as wide as a plus and read aloud as "minus", which a hyphen is not. */
    private static final String MINUS = "\u2212";

    private final CurrencyUnit unit;

    private final Pattern plainForm;

    private final AmountText text;

    /** @throws IllegalArgumentException where the currency has no minor digits defined, as for test codes and metals */
    public ShopCurrency(CurrencyUnit unit) {
        if (unit.isPseudoCurrency()) {
            throw new IllegalArgumentException("Not a currency a shop can keep books in: " + unit.getCode());
        }
        this.unit = unit;
        this.plainForm = Pattern.compile("-?(0|[1-9][0-9]*)" + (digits() == 0 ? "" : "\\.[0-9]{" + digits() + "}"));
        this.text = new AmountText(Currency.getInstance(unit.getCode()), digits());
    }

    /**
     * The currency of an ISO 4217 code.
     *
     * @throws org.joda.money.IllegalCurrencyException where the code is unknown
     */
    public static ShopCurrency ofCode(String code) {
        return new ShopCurrency(CurrencyUnit.of(code));
    }

    /** The ISO 4217 code of three capital letters. */
    public String code() {
        return unit.getCode();
    }

    /** How many decimals an amount has: 0 to 4. */
    public int digits() {
        return unit.getDecimalPlaces();
    }

    /** Every sign that may stand before or after a typed amount, the longest first: {@code USD}, {@code US$}, {@code $}. */
    public List<String> signs() {
        return text.symbols();
    }

    /**
     * Reads what a person typed: {@code 12}, {@code 12.5}, {@code 12,50}, {@code $12.50}, {@code 1 234.50},
     * {@code 1,234.50}. The decimal mark is a point or a comma; spaces around are ignored.
     *
     * @throws UnreadableAmount where the text is empty, has letters or another currency's symbol, has more decimals than
     *     the currency, or could be read in two ways, as {@code 1,234} and {@code 1.234}
     */
    public Amount parse(String typed) {
        return text.read(typed);
    }

    /** The amount as a plain decimal for files, always with all decimals: {@code -12.50}. */
    public String plain(Amount amount) {
        return decimal(amount).toPlainString();
    }

    /**
     * Reads exactly what {@link #plain} writes and nothing else: no {@code 12.5}, no {@code +1.00}, no {@code -0.00}.
     *
     * @throws UnreadableAmount for any other text
     */
    public Amount parsePlain(String plain) {
        if (!plainForm.matcher(plain).matches()) {
            throw UnreadableAmount.unreadable(plain, digits());
        }
        Amount amount = AmountText.exact(plain, digits());
        if (amount.isZero() && plain.startsWith("-")) {
            throw UnreadableAmount.unreadable(plain, digits());
        }
        return amount;
    }

    /** The amount for a page, with symbol, grouping and decimal mark of the locale and a true minus sign in front. */
    public String format(Amount amount, Locale locale) {
        return format(amount, locale, digits());
    }

    /** An amount of whole units in the same way, without minor units behind it; what it has of them is cut off. */
    public String whole(Amount amount, Locale locale) {
        return format(amount, locale, 0);
    }

    private String format(Amount amount, Locale locale, int decimals) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(Currency.getInstance(code()));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.DOWN);
        String absolute = format.format(decimal(amount).abs());
        return amount.isNegative() ? MINUS + absolute : absolute;
    }

    private BigDecimal decimal(Amount amount) {
        return BigDecimal.valueOf(amount.minor(), digits());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ShopCurrency currency && unit.equals(currency.unit);
    }

    @Override
    public int hashCode() {
        return unit.hashCode();
    }

    @Override
    public String toString() {
        return code();
    }
}
