package patinary.yearfolder;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A year folder as an accountant has it: unpacked on a disk. */
record UnpackedFolder(Path path, List<String> names) {

    private static final CSVFormat CSV =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    static UnpackedFolder of(byte[] zip, Path under) throws IOException {
        List<String> names = new ArrayList<>();
        Path root = null;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Path file = under.resolve(entry.getName());
                Files.createDirectories(file.getParent());
                Files.copy(in, file);
                root = root == null ? file.getParent() : root;
                names.add(root.relativize(file).toString());
            }
        }
        return new UnpackedFolder(java.util.Objects.requireNonNull(root), names);
    }

    Path file(String name) {
        return path.resolve(name);
    }

    String text(String name) throws IOException {
        return Files.readString(file(name));
    }

    List<CSVRecord> table(String name) throws IOException {
        try (CSVParser parser = CSVParser.parse(Files.newBufferedReader(file(name + ".csv")), CSV)) {
            return parser.getRecords();
        }
    }
}
