package patinary.backup;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * What the process that proves a backup tells the one that asked for it.
 *
 * @param good whether the shop that was made of it is the one that was saved
 * @param told the same in words
 * @param rows how many rows each file has; empty where it could not be loaded
 */
record ProofReport(boolean good, String told, Map<String, Long> rows) {

    private static final String ROWS = "rows.";

    void write(Path file) throws IOException {
        Properties properties = new Properties();
        properties.setProperty("good", String.valueOf(good));
        properties.setProperty("told", told);
        rows.forEach((name, count) -> properties.setProperty(ROWS + name, count.toString()));
        try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            properties.store(writer, null);
        }
    }

    static ProofReport read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        Map<String, Long> rows = new TreeMap<>();
        for (String name : properties.stringPropertyNames()) {
            if (name.startsWith(ROWS)) {
                rows.put(name.substring(ROWS.length()), Long.valueOf(properties.getProperty(name)));
            }
        }
        return new ProofReport(
                Boolean.parseBoolean(properties.getProperty("good")), properties.getProperty("told", ""), rows);
    }
}
