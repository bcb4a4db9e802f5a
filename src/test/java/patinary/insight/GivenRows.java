package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Check values of this package; src/test/resources/patinary/insight/README.md says where they are from. */
final class GivenRows {

    private GivenRows() {}

    static List<CSVRecord> of(String name) {
        InputStream stream = Objects.requireNonNull(GivenRows.class.getResourceAsStream(name + ".csv"), name);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A file of names and numbers. */
    static Map<String, Double> scalars(String name) {
        return of(name).stream().collect(Collectors.toMap(row -> row.get(0), row -> Double.valueOf(row.get(1))));
    }

    /** Alike to nine digits. */
    static void assertLike(double value, double wanted, String what) {
        assertThat(value).as(what).isCloseTo(wanted, within(Math.max(1e-15, Math.abs(wanted) * 1e-9)));
    }
}
