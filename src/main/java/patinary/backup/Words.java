package patinary.backup;

import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;

/** The sentences that are kept with a run and shown on the console. */
@Component
class Words {

    private static final long KILO = 1000;

    private final MessageSource messages;
    private final CurrentShop shop;

    Words(MessageSource messages, CurrentShop shop) {
        this.messages = messages;
        this.shop = shop;
    }

    String of(String key, Object... arguments) {
        return messages.getMessage("backup." + key, arguments, shop.locale());
    }

    /** A size as people say it, in the decimal units of the SI. */
    static String size(long bytes) {
        if (bytes < KILO) {
            return bytes + " B";
        }
        double shown = bytes;
        int unit = -1;
        // From 999.5 on it would be written as 1000.
        while (shown >= KILO - 0.5) {
            shown /= KILO;
            unit++;
        }
        String number = shown < 9.95 ? String.format(Locale.ROOT, "%.1f", shown) : String.valueOf(Math.round(shown));
        return number + " " + new String[] {"kB", "MB", "GB", "TB", "PB", "EB"}[unit];
    }
}
