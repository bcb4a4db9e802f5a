package patinary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * An archive as a zip. It is read in place and never unpacked; still, a name that leads elsewhere is refused, and so is
 * a zip with more entries or more unpacked bytes than any shop has.
 */
final class ZipSource implements ArchiveSource {

    private static final int MOST_ENTRIES = 200;

    /** Twice what the tables of fifty times ten full years come to; a backup that could be made must not be too large to be loaded. */
    private static final long MOST_BYTES = 8L * 1024 * 1024 * 1024;

    /** Tables and pictures together pack to a tenth at best; what packs a hundred times smaller is made to fill a disk. */
    private static final long MOST_PACKED = 200;

    private static final long SMALL = 16L * 1024 * 1024;

    /** Photos are bounded for themselves: each by {@link PhotoImport#MOST_BYTES}, all of them by their number. */
    static final int MOST_PHOTOS = 100_000;

    private final ZipFile zip;
    private final Map<String, ZipEntry> entries = new TreeMap<>();
    private final long mostBytes;

    ZipSource(Path file) throws IOException {
        this(file, MOST_ENTRIES, MOST_BYTES);
    }

    ZipSource(Path file, int mostEntries, long mostBytes) throws IOException {
        this.mostBytes = mostBytes;
        zip = new ZipFile(file.toFile());
        try {
            look(mostEntries);
            refuseBomb(Files.size(file));
        } catch (ArchiveRefused refused) {
            zip.close();
            throw refused;
        }
    }

    @Override
    public Set<String> names() {
        return Collections.unmodifiableSet(entries.keySet());
    }

    @Override
    public InputStream open(String name) throws IOException {
        ZipEntry entry = entries.get(name);
        long most = PhotoTables.isFile(name) ? PhotoImport.MOST_BYTES + 1L : mostBytes;
        // No more than it declares: the sum of what is declared was looked at.
        long declared = entry.getSize() < 0 ? most : Math.min(most, entry.getSize());
        try {
            return new BoundedStream(zip.getInputStream(entry), name, declared, entry.getCrc());
        } catch (ZipException unknownPacking) {
            throw new ArchiveRefused(ArchiveError.ofFile(name, "damaged"));
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private void look(int mostEntries) {
        ErrorList errors = new ErrorList();
        if (zip.size() > mostEntries + MOST_PHOTOS || tables() > mostEntries) {
            throw new ArchiveRefused(ArchiveError.ofFile("", "zip-entries", String.valueOf(mostEntries)));
        }
        long declared = 0;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName();
            boolean photo = PhotoTables.isFile(name);
            declared += photo ? 0 : Math.max(0, entry.getSize());
            if (!photo && isElsewhere(entry)) {
                errors.add(ArchiveError.ofFile(name, "zip-path"));
            } else if (!name.endsWith(".md") && !entry.isDirectory() && entries.put(name, entry) != null) {
                errors.add(ArchiveError.ofFile(name, "zip-twice"));
            }
        }
        if (declared > mostBytes) {
            errors.add(ArchiveError.ofFile("", "zip-size", String.valueOf(mostBytes)));
        }
        errors.refuseIfAny();
    }

    private void refuseBomb(long packed) {
        long declared =
                zip.stream().mapToLong(entry -> Math.max(0, entry.getSize())).sum();
        if (declared > SMALL && declared / MOST_PACKED > packed) {
            throw new ArchiveRefused(ArchiveError.ofFile("", "zip-bomb", String.valueOf(MOST_PACKED)));
        }
    }

    private long tables() {
        return zip.stream()
                .filter(entry -> !PhotoTables.isFile(entry.getName()))
                .count();
    }

    /** The folder of photos may have an entry of its own, as zip programs write one; no other may. */
    private static boolean isElsewhere(ZipEntry entry) {
        String name = entry.getName();
        return !name.equals(PhotoTables.FOLDER)
                && (entry.isDirectory() || name.contains("/") || name.contains("\\") || name.contains(".."));
    }
}
