package patinary.bringing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * In which order the parts of a date stand. A time of day behind it is left away: the day counts as the file writes it. Two
 * digits of a year are of this century.
 */
enum DateForm {
    YEAR_MONTH_DAY(
            "(?<y>\\d{4})[-/. ]{1,2}(?<m>\\d{1,2})[-/. ]{1,2}(?<d>\\d{1,2})|(?<y2>\\d{4})(?<m2>\\d{2})(?<d2>\\d{2})"),
    DAY_MONTH_YEAR("(?<d>\\d{1,2})[-/. ]{1,2}(?<m>\\d{1,2})[-/. ]{1,2}(?<y>\\d{4}|\\d{2})"),
    MONTH_DAY_YEAR("(?<m>\\d{1,2})[-/. ]{1,2}(?<d>\\d{1,2})[-/. ]{1,2}(?<y>\\d{4}|\\d{2})"),
    MONTH_AS_WORD("(?<d>\\d{1,2})(?:st|nd|rd|th)?[-/. ]{1,2}(?<m>\\p{L}{3,12})[-/., ]{1,2}(?<y>\\d{4}|\\d{2})"
            + "|(?<m2>\\p{L}{3,12})[-/. ]{1,2}(?<d2>\\d{1,2})(?:st|nd|rd|th)?,? (?<y2>\\d{4})");

    private static final int LONGEST = 60;
    private static final int CENTURY = 2000;
    private static final Pattern TIME =
            Pattern.compile("(?:T|,? {1,2}(?:at )?)\\d{1,2}[:.]\\d{2}.{0,30}", Pattern.CASE_INSENSITIVE);
    private static final Pattern WEEKDAY = Pattern.compile("^\\p{L}{2,12}[.,] ?,?(?=\\d|\\p{L}{3,12}[. ])");
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u202f]+");

    private final Pattern pattern;
    private final boolean twice;

    DateForm(String pattern) {
        this.pattern = Pattern.compile(pattern);
        this.twice = pattern.contains("<y2>");
    }

    public String messageKey() {
        return "bringing.date." + name();
    }

    /** The day, or nothing where the text is none in this form. */
    Optional<LocalDate> read(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = WEEKDAY.matcher(SPACES.matcher(text).replaceAll(" ").strip())
                .replaceFirst("")
                .strip();
        Matcher date = pattern.matcher(plain);
        if (!date.lookingAt()) {
            return Optional.empty();
        }
        String rest = plain.substring(date.end());
        if (!rest.isEmpty() && !TIME.matcher(rest).matches()) {
            return Optional.empty();
        }
        return day(part(date, "y"), part(date, "m"), part(date, "d"));
    }

    /** The forms in which every one of the texts is a day. */
    static List<DateForm> fitting(List<String> texts) {
        return texts.isEmpty()
                ? List.of()
                : List.of(values()).stream()
                        .filter(form ->
                                texts.stream().allMatch(text -> form.read(text).isPresent()))
                        .toList();
    }

    private String part(Matcher date, String name) {
        @Nullable String first = date.group(name);
        return first == null && twice ? date.group(name + "2") : first == null ? "" : first;
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        Optional<Integer> ofYear = Character.isDigit(month.charAt(0))
                ? Optional.of(Integer.parseInt(month))
                : MonthWords.read(month).map(Month::getValue);
        try {
            int typed = Integer.parseInt(year);
            return ofYear.map(number ->
                    LocalDate.of(year.length() == 2 ? CENTURY + typed : typed, number, Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
