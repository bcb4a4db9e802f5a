package patinary.slips;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds a date in a line. Where day and month could be either way round, both are given. */
final class WrittenDate {

    private static final Pattern YEAR_FIRST =
            Pattern.compile("(?<!\\d)(20\\d{2})[-/.](\\d{1,2})[-/.](\\d{1,2})(?!\\d)");
    private static final Pattern NUMBERS =
            Pattern.compile("(?<!\\d)(\\d{1,2})\\s?([-/.])\\s?(\\d{1,2})\\s?\\2\\s?(20\\d{2}|\\d{2})(?!\\d)");
    private static final Pattern DAY_NAME =
            Pattern.compile("(?<!\\d)(\\d{1,2})\\.?[ -]([A-Za-z]{3,9})\\.?,?[ -](20\\d{2}|\\d{2})(?!\\d)");
    private static final Pattern NAME_DAY =
            Pattern.compile("([A-Za-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (20\\d{2})(?!\\d)");
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private WrittenDate() {}

    static List<LocalDate> in(String line) {
        Matcher found = YEAR_FIRST.matcher(line);
        List<LocalDate> dates = new ArrayList<>();
        if (found.find()) {
            add(dates, found.group(1), found.group(2), found.group(3));
            return dates;
        }
        found = NUMBERS.matcher(line);
        if (found.find()) {
            add(dates, found.group(4), found.group(1), found.group(3));
            if (found.group(2).equals(".")) {
                dates.clear();
            }
            add(dates, found.group(4), found.group(3), found.group(1));
            return dates;
        }
        found = DAY_NAME.matcher(line);
        if (found.find()) {
            add(dates, found.group(3), month(found.group(2)), found.group(1));
            return dates;
        }
        found = NAME_DAY.matcher(line);
        if (found.find()) {
            add(dates, found.group(3), month(found.group(1)), found.group(2));
        }
        return dates;
    }

    private static String month(String name) {
        return String.valueOf(MONTHS.indexOf(name.substring(0, 3).toLowerCase(Locale.ROOT)) + 1);
    }

    private static void add(List<LocalDate> dates, String year, String month, String day) {
        try {
            int written = Integer.parseInt(year);
            LocalDate date = LocalDate.of(
                    written < 100 ? 2000 + written : written, Integer.parseInt(month), Integer.parseInt(day));
            if (!dates.contains(date)) {
                dates.add(date);
            }
        } catch (DateTimeException impossible) {
            // Then it is not written this way round.
        }
    }
}
