package patinary.reference;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A reference file read strictly: a header, and as many fields in every row. */
record Table(List<String> header, List<CSVRecord> rows) {

    static final Path FOLDER = Path.of("db", "reference");

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    static Table read(String name) throws IOException {
        try (CSVParser parser = CSVParser.parse(FOLDER.resolve(name), StandardCharsets.UTF_8, FORMAT)) {
            return new Table(parser.getHeaderNames(), parser.getRecords());
        }
    }

    /** The values of some columns of each row, joined. */
    List<String> keys(String... columns) {
        return rows.stream()
                .map(row -> Stream.of(columns).map(row::get).collect(Collectors.joining("|")))
                .toList();
    }
}
