package patinary.labels;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The grids in {@code db/reference/label-grids.csv}: layouts in common use, described by their measures alone. */
final class BuiltInGrids {

    private static final String RESOURCE = "/db/reference/label-grids.csv";
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private BuiltInGrids() {}

    /** @throws IllegalStateException where the file is not there */
    static List<KnownGrid> load() {
        try (InputStream in = BuiltInGrids.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            try (CSVParser rows = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                return rows.stream().map(BuiltInGrids::grid).toList();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static KnownGrid grid(CSVRecord row) {
        LabelGrid grid = new LabelGrid(
                Paper.valueOf(row.get("paper")),
                Integer.parseInt(row.get("rows")),
                Integer.parseInt(row.get("columns")),
                new BigDecimal(row.get("left_mm")),
                new BigDecimal(row.get("top_mm")),
                new BigDecimal(row.get("width_mm")),
                new BigDecimal(row.get("height_mm")),
                new BigDecimal(row.get("across_mm")),
                new BigDecimal(row.get("down_mm")));
        return new KnownGrid(row.get("key"), "", grid);
    }
}
