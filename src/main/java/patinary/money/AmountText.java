package patinary.money;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads an amount as people type it, in any locale's habits, without guessing.
 *
 * <p>A point or a comma is the decimal mark. Thousands may be grouped by spaces, apostrophes or the other mark, but only
 * in full groups of three. One mark followed by exactly three digits is refused, since 1,234 is a thousand to one reader
 * and about one to another; only where the currency itself has three decimals or more is the point taken as decimal.
 */
final class AmountText {

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u202f\\u2009]+");

    private static final Pattern WHOLE = Pattern.compile("[0-9]+");

    private static final Pattern ONE_MARK = Pattern.compile("([0-9]*)([.,])([0-9]+)");

    private static final Pattern GROUPED =
            Pattern.compile("([1-9][0-9]{0,2}(?:([ '\u2019.,])[0-9]{3})(?:\\2[0-9]{3})*)(?:(?!\\2)[.,]([0-9]+))?");

    private final Currency currency;

    private final int digits;

    /** Worked out when first needed, over a thousand locales: what only reads an archive never needs it. */
    private @Nullable List<String> symbols;

    AmountText(Currency currency, int digits) {
        this.currency = currency;
        this.digits = digits;
    }

    /** Two threads at once come to the same. */
    List<String> symbols() {
        List<String> known = symbols;
        if (known == null) {
            known = symbolsOf(currency);
            symbols = known;
        }
        return known;
    }

    private static List<String> symbolsOf(Currency currency) {
        return Stream.concat(
                        Stream.of(currency.getCurrencyCode()),
                        Stream.of(Locale.getAvailableLocales()).map(currency::getSymbol))
                .map(symbol -> SPACES.matcher(symbol).replaceAll(" ").strip())
                .filter(symbol -> !symbol.isEmpty() && symbol.chars().noneMatch(Character::isDigit))
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
    }

    Amount read(String typed) {
        String text = SPACES.matcher(typed).replaceAll(" ").strip().replace('\u2212', '-');
        if (text.isEmpty()) {
            throw UnreadableAmount.missing(digits);
        }
        boolean negative = text.startsWith("-");
        String unsigned = withoutSymbol(negative ? text.substring(1).strip() : text);
        if (!negative && unsigned.startsWith("-")) {
            negative = true;
            unsigned = unsigned.substring(1).strip();
        }
        Amount amount = exact(decimal(unsigned, typed), digits);
        return negative ? amount.negated() : amount;
    }

    /** Text of digits and at most one point, as minor units. */
    static Amount exact(String decimal, int digits) {
        try {
            return Amount.of(new BigDecimal(decimal).movePointRight(digits).longValueExact());
        } catch (ArithmeticException beyondLong) {
            throw UnreadableAmount.tooLarge(decimal, digits);
        }
    }

    private String withoutSymbol(String text) {
        for (String symbol : symbols()) {
            int length = symbol.length();
            if (text.regionMatches(true, 0, symbol, 0, length)) {
                return text.substring(length).strip();
            }
            if (text.regionMatches(true, text.length() - length, symbol, 0, length)) {
                return text.substring(0, text.length() - length).strip();
            }
        }
        return text;
    }

    private String decimal(String text, String typed) {
        if (WHOLE.matcher(text).matches()) {
            return text;
        }
        Matcher oneMark = ONE_MARK.matcher(text);
        if (oneMark.matches()) {
            refuseTwoMeanings(oneMark, typed);
            return joined(oneMark.group(1), oneMark.group(3), typed);
        }
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches()) {
            return joined(grouped.group(1).replaceAll("[^0-9]", ""), grouped.group(3), typed);
        }
        throw UnreadableAmount.unreadable(typed, digits);
    }

    private void refuseTwoMeanings(Matcher oneMark, String typed) {
        String whole = oneMark.group(1);
        boolean couldBeThousands =
                oneMark.group(3).length() == 3 && !whole.isEmpty() && whole.length() <= 3 && !whole.startsWith("0");
        boolean pointIsDecimal = digits >= 3 && oneMark.group(2).equals(".");
        if (couldBeThousands && !pointIsDecimal) {
            throw UnreadableAmount.ambiguous(typed, digits);
        }
    }

    private String joined(String whole, @Nullable String decimals, String typed) {
        if (decimals == null) {
            return whole;
        }
        if (decimals.length() > digits) {
            throw UnreadableAmount.tooManyDecimals(typed, digits);
        }
        return "0" + whole + "." + decimals;
    }
}
