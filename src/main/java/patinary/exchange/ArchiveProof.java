package patinary.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import patinary.ledger.Check;
import patinary.photos.PhotoCheck;
import patinary.shop.CurrentShop;

/**
 * Proves an archive by making a shop of it. The shop that this runs in must be an empty one that is thrown away afterwards:
 * everything is loaded, the books are checked, the shop is written out once more, and what is written must be what was read.
 */
@Service
public class ArchiveProof {

    /**
     * What came of it.
     *
     * @param shop the shop's name
     * @param rows how many rows each table's file has
     * @param photos how many pictures came back with the same SHA-256
     * @param lost how many pictures the shop had lost before the archive was written
     * @param different files that are not written again as they were read
     * @param sums sums of the books that are others than the archive says, as {@code year account: was, is}
     * @param findings what the check of the books found
     * @param sameCalculation whether the archive was written by this version of the calculation
     */
    public record Proof(
            String shop,
            Map<String, Long> rows,
            long photos,
            long lost,
            List<String> different,
            List<String> sums,
            int findings,
            boolean sameCalculation) {

        /** Whether a shop can be made of the archive that is the one that was saved. */
        public boolean isGood() {
            return different.isEmpty() && sums.isEmpty() && findings == 0;
        }
    }

    private final ShopArchive archive;
    private final ArchiveExport export;
    private final Check check;
    private final PhotoCheck photos;
    private final CurrentShop shop;
    private final JdbcTemplate jdbc;

    ArchiveProof(
            ShopArchive archive,
            ArchiveExport export,
            Check check,
            PhotoCheck photos,
            CurrentShop shop,
            JdbcTemplate jdbc) {
        this.archive = archive;
        this.export = export;
        this.check = check;
        this.photos = photos;
        this.shop = shop;
        this.jdbc = jdbc;
    }

    /**
     * Loads the archive and compares.
     *
     * @throws ArchiveRefused where it cannot be loaded at all
     */
    public Proof run(Path file) throws IOException {
        try (ArchiveSource source = ShopArchive.source(file)) {
            archive.load(source, Progress.SILENT);
            Map<String, String> was = manifest(source);
            Map<String, String> is = writtenAgain(source.names().contains(BookFigures.FILE));
            long lost = was.values().stream().filter(Manifest.MISSING::equals).count();
            long broken =
                    photos.run().stream().filter(PhotoCheck.Finding::isLoss).count();
            return new Proof(
                    shop.name(),
                    rows(),
                    was.entrySet().stream()
                            .filter(entry -> PhotoTables.isFile(entry.getKey()))
                            .filter(entry -> entry.getValue().equals(is.get(entry.getKey())))
                            .count(),
                    lost,
                    different(was, is),
                    sums(source),
                    check.run().size() + (int) (broken - lost),
                    was.getOrDefault(Manifest.CALCULATION, "").equals(is.get(Manifest.CALCULATION)));
        }
    }

    /** How many rows each table of this shop has, by the name of its file. */
    public Map<String, Long> rows() {
        Map<String, Long> rows = new TreeMap<>();
        for (ArchiveTable table : ArchiveTables.ALL) {
            rows.put(table.file(), jdbc.queryForObject("select count(*) from " + table.name(), Long.class));
        }
        return rows;
    }

    private static Map<String, String> manifest(ArchiveSource source) throws IOException {
        return source.names().contains(Manifest.FILE) ? new ManifestCheck(source, new ErrorList()).read() : Map.of();
    }

    /** The manifest of the shop as it is now; what else is written goes nowhere. */
    private Map<String, String> writtenAgain(boolean withFigures) throws IOException {
        ByteArrayOutputStream manifest = new ByteArrayOutputStream();
        ArchiveSink sink = name -> name.equals(Manifest.FILE) ? manifest : OutputStream.nullOutputStream();
        if (withFigures) {
            export.writeWithFigures(sink, Progress.SILENT);
        } else {
            export.write(sink, Progress.SILENT);
        }
        return manifest(new OneFile(Manifest.FILE, manifest.toByteArray()));
    }

    /** The sums are told by themselves, and the version of the calculation is no difference of the shop. */
    private static List<String> different(Map<String, String> was, Map<String, String> is) {
        return was.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(Manifest.CALCULATION)
                        && !entry.getKey().equals(BookFigures.FILE))
                .filter(entry -> !entry.getValue().equals(is.get(entry.getKey())))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private List<String> sums(ArchiveSource source) throws IOException {
        List<List<String>> was = BookFigures.linesIn(source);
        if (was.isEmpty()) {
            return List.of();
        }
        Map<String, String> before = byAccount(was);
        Map<String, String> now = byAccount(BookFigures.of(jdbc).lines(shop.currency()));
        List<String> differing = new ArrayList<>();
        Map<String, String> all = new TreeMap<>(before);
        all.putAll(now);
        for (String account : all.keySet()) {
            String then = before.getOrDefault(account, "0");
            String here = now.getOrDefault(account, "0");
            if (!then.equals(here)) {
                differing.add(account + ": " + then + ", " + here);
            }
        }
        return differing;
    }

    private static Map<String, String> byAccount(List<List<String>> lines) {
        Map<String, String> sums = new TreeMap<>();
        lines.forEach(line -> sums.put(line.get(0) + " " + line.get(1), line.get(2)));
        return sums;
    }

    /** An archive of one file. */
    private record OneFile(String name, byte[] bytes) implements ArchiveSource {

        @Override
        public Set<String> names() {
            return Set.of(name);
        }

        @Override
        public InputStream open(String file) {
            return new ByteArrayInputStream(bytes);
        }
    }
}
