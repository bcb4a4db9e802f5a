package patinary.finishes;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;

/** Words for how long a wait is, in templates: {@code ${@span.say(minutes)}}. */
@Component("span")
public class Span {

    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    /** "15 min", "2 h", "1 day 12 h", "30 days"; minutes are left out once it is days. */
    public String say(long minutes) {
        return words(minutes);
    }

    /** "10 to 15" as short as it can be said: {@code 10–15 min}, {@code 2 h–4 h}. */
    public static String range(long from, long to) {
        if (from == to) {
            return words(from);
        }
        return to < HOUR ? from + "–" + words(to) : words(from) + "–" + words(to);
    }

    private static String words(long minutes) {
        long days = minutes / DAY;
        long hours = minutes % DAY / HOUR;
        long rest = minutes % HOUR;
        List<String> parts = new ArrayList<>();
        if (days > 0) {
            parts.add(days + (days == 1 ? "\u00a0day" : "\u00a0days"));
        }
        if (hours > 0) {
            parts.add(hours + "\u00a0h");
        }
        if (days == 0 && rest > 0 || parts.isEmpty()) {
            parts.add(rest + "\u00a0min");
        }
        return String.join(" ", parts);
    }
}
