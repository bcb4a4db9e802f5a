package patinary.yearfolder;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of hashes of a folder, one line for each file: the SHA-256 in 64 small hexadecimal digits, two spaces, the name.
 * {@code sha256sum -c} of the GNU core utilities reads it too.
 */
record Manifest(List<Entry> entries) {

    static final String NAME = "manifest.sha256";

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (\\S.*)");

    /** One file and its hash. */
    record Entry(String hash, String name) {}

    byte[] bytes() {
        StringBuilder text = new StringBuilder();
        entries.forEach(entry ->
                text.append(entry.hash()).append("  ").append(entry.name()).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Reads what {@link #bytes} writes; empty where any line is something else. */
    static Optional<Manifest> read(byte[] bytes) {
        List<Matcher> lines = new String(bytes, StandardCharsets.UTF_8)
                .lines()
                .map(LINE::matcher)
                .toList();
        return lines.stream().allMatch(Matcher::matches)
                ? Optional.of(new Manifest(lines.stream()
                        .map(line -> new Entry(line.group(1), line.group(2)))
                        .toList()))
                : Optional.empty();
    }
}
