package patinary.exchange;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Holds an archive's files against its manifest, where it has one, and finds files that no archive has. */
final class ManifestCheck {

    private final ArchiveSource source;
    private final ErrorList errors;
    private final Set<String> lost = new HashSet<>();

    ManifestCheck(ArchiveSource source, ErrorList errors) {
        this.source = source;
        this.errors = errors;
    }

    /** Refuses an archive without a manifest too: the program itself writes none without one. */
    void runStrictly() throws IOException {
        run();
        if (!source.names().contains(Manifest.FILE) && !source.names().contains(BookFigures.FILE)) {
            errors.add(ArchiveError.ofFile(Manifest.FILE, "no-manifest"));
        }
        errors.refuseIfAny();
    }

    /** @return the pictures that the shop had lost already when the archive was written */
    Set<String> run() throws IOException {
        for (String name : source.names()) {
            if (!isBeside(name) && ArchiveTables.ofFile(name).isEmpty() && !PhotoTables.isFile(name)) {
                errors.add(ArchiveError.ofFile(name, "file-unknown"));
            }
        }
        if (source.names().contains(Manifest.FILE)) {
            compare(read());
        } else if (source.names().contains(BookFigures.FILE)) {
            errors.add(ArchiveError.ofFile(Manifest.FILE, "no-manifest"));
        }
        return lost;
    }

    private static boolean isBeside(String name) {
        return name.equals(Manifest.FILE) || name.equals(BookFigures.FILE);
    }

    /** Every line of the manifest. */
    Map<String, String> read() throws IOException {
        Map<String, String> entries = new HashMap<>();
        new CsvFile(source, errors).read(Manifest.FILE, List.of(Manifest.NAME, Manifest.VALUE), (line, cells) -> {
            if (entries.put(cells.get(0), cells.get(1)) != null) {
                errors.add(ArchiveError.of(Manifest.FILE, line, Manifest.NAME, cells.get(0), "twice", Manifest.NAME));
            }
        });
        return entries;
    }

    private void compare(Map<String, String> entries) throws IOException {
        String format = entries.remove(Manifest.FORMAT);
        entries.remove(Manifest.CALCULATION);
        if (!String.valueOf(ArchiveTables.FORMAT).equals(format)) {
            errors.add(ArchiveError.ofFile(Manifest.FILE, "format", format == null ? "" : format));
        }
        for (Map.Entry<String, String> entry : entries.entrySet()) {
            if (!source.names().contains(entry.getKey())) {
                if (entry.getValue().equals(Manifest.MISSING) && PhotoTables.isFile(entry.getKey())) {
                    lost.add(entry.getKey());
                } else {
                    errors.add(ArchiveError.ofFile(entry.getKey(), "file-missing"));
                }
            } else if (!entry.getValue().equals(Manifest.hash(source.open(entry.getKey())))) {
                errors.add(ArchiveError.ofFile(entry.getKey(), "hash"));
            }
        }
        for (String name : source.names()) {
            if (!name.equals(Manifest.FILE) && !entries.containsKey(name)) {
                errors.add(ArchiveError.ofFile(name, "unlisted"));
            }
        }
    }
}
