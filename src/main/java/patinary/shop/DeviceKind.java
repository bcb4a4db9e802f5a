package patinary.shop;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a browser says of the device it runs on, in a word that its owner knows. It is a hint and no proof. */
enum DeviceKind {
    IOS("iphone|ipad|ipod"),
    ANDROID("android"),
    WINDOWS("windows"),
    MACOS("mac os|macintosh"),
    LINUX("linux|x11|cros"),
    OTHER("");

    private final Pattern sign;

    DeviceKind(String sign) {
        this.sign = Pattern.compile(sign);
    }

    /** The first kind whose sign stands in a browser's name of itself: a phone also names the system it is made from. */
    static DeviceKind of(@Nullable String userAgent) {
        String words = userAgent == null ? "" : userAgent.toLowerCase(Locale.ROOT);
        for (DeviceKind kind : values()) {
            if (kind.sign.matcher(words).find()) {
                return kind;
            }
        }
        return OTHER;
    }
}
