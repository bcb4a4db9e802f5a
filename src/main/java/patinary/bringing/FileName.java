package patinary.bringing;

import org.jspecify.annotations.Nullable;

/** The name a file was sent with: something to be shown, never a path. */
final class FileName {

    private static final int LONGEST = 200;

    private FileName() {}

    static String shown(@Nullable String sent) {
        String name = sent == null ? "" : sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
        String plain = name.replaceAll("[\\p{C}]+", " ").strip();
        if (plain.isEmpty()) {
            return "file";
        }
        return plain.substring(0, Math.min(plain.length(), LONGEST));
    }
}
