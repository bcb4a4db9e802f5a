package patinary.bringing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which mark stands before the decimals. Thousands may be grouped by spaces, apostrophes or the other mark, the last group of
 * three, those before of two or three. A minus may stand before or behind, or brackets around; a currency before or behind.
 */
enum NumberForm {
    POINT("\\.", ","),
    COMMA(",", "\\.");

    private static final int LONGEST = 60;
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");
    private static final Pattern MINUS = Pattern.compile("[\\u2212\\u2010-\\u2013\\uFE63\\uFF0D]");
    private static final String CURRENCY = "[\\p{L}\\p{Sc}]{1,5}\\.?";
    private static final Pattern WHOLE = Pattern.compile("(?<m1>-)? ?(?<before>" + CURRENCY
            + ")? ?(?<m2>-)? ?(?<body>[0-9.,][0-9.,'\\u2019 ]*)(?<behind>" + CURRENCY + ")? ?(?<m3>-)?");

    private final Pattern body;

    NumberForm(String decimal, String grouping) {
        String group = "[ '\\u2019" + grouping + "]";
        body = Pattern.compile("(?<whole>[0-9]{1,15}|[0-9]{1,3}(?<group>" + group
                + ")(?:[0-9]{2,3}\\k<group>){0,4}[0-9]{3}|)(?:" + decimal + "(?<part>[0-9]{0,15}))?");
    }

    /**
     * A number and what stood beside it.
     *
     * @param currency the sign or code of a currency, or empty
     */
    record Read(BigDecimal value, String currency) {}

    public String messageKey() {
        return "bringing.number." + name();
    }

    /** The number, or nothing where the text is none in this form. */
    Optional<Read> read(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = MINUS.matcher(SPACES.matcher(text).replaceAll(" "))
                .replaceAll("-")
                .strip();
        boolean bracketed = plain.startsWith("(") && plain.endsWith(")");
        Matcher parts =
                WHOLE.matcher(bracketed ? plain.substring(1, plain.length() - 1).strip() : plain);
        if (!parts.matches()) {
            return Optional.empty();
        }
        long minus = Stream.of("m1", "m2", "m3")
                .filter(name -> parts.group(name) != null)
                .count();
        String before = orEmpty(parts.group("before"));
        String behind = orEmpty(parts.group("behind"));
        if (minus > (bracketed ? 0 : 1) || !before.isEmpty() && !behind.isEmpty()) {
            return Optional.empty();
        }
        return value(parts.group("body").strip())
                .map(value -> new Read(minus > 0 || bracketed ? value.negate() : value, before + behind));
    }

    /** The forms in which every one of the texts is a number. */
    static List<NumberForm> fitting(List<String> texts) {
        return Stream.of(values())
                .filter(form -> texts.stream().allMatch(text -> form.read(text).isPresent()))
                .toList();
    }

    /** Whether it matters which form is meant: some text is another number in each. */
    static boolean differ(List<String> texts) {
        return texts.stream().anyMatch(text -> !POINT.plain(text).equals(COMMA.plain(text)));
    }

    private Optional<BigDecimal> plain(String text) {
        return read(text).map(read -> read.value().stripTrailingZeros());
    }

    private Optional<BigDecimal> value(String text) {
        Matcher number = body.matcher(text);
        if (!number.matches()) {
            return Optional.empty();
        }
        String whole = number.group("whole").replaceAll("[^0-9]", "");
        String part = orEmpty(number.group("part"));
        return whole.isEmpty() && part.isEmpty()
                ? Optional.empty()
                : Optional.of(new BigDecimal("0" + whole + (part.isEmpty() ? "" : "." + part)));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
