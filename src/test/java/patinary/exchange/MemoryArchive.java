package patinary.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** An archive in memory, to write to and to read from. */
final class MemoryArchive implements ArchiveSource {

    private final Map<String, byte[]> files = new TreeMap<>();

    /** A file of these rows, with the line ends of RFC 4180. */
    MemoryArchive with(String file, String... rows) {
        files.put(file, (String.join("\r\n", rows) + "\r\n").getBytes(StandardCharsets.UTF_8));
        return this;
    }

    MemoryArchive withBytes(String file, byte[] bytes) {
        files.put(file, bytes);
        return this;
    }

    MemoryArchive without(String file) {
        files.remove(file);
        return this;
    }

    String text(String file) {
        return new String(files.get(file), StandardCharsets.UTF_8);
    }

    Map<String, byte[]> files() {
        return files;
    }

    @Override
    public Set<String> names() {
        return Set.copyOf(files.keySet());
    }

    @Override
    public InputStream open(String name) throws IOException {
        return new ByteArrayInputStream(files.get(name));
    }

    /** Where an export may write this archive. */
    ArchiveSink sink() {
        return name -> new ByteArrayOutputStream() {
            @Override
            public void close() {
                files.put(name, toByteArray());
            }
        };
    }
}
