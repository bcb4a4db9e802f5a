package patinary.survival;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the check values of R beside this class; their README tells where they are from. */
final class CheckValues {

    private CheckValues() {}

    static List<CSVRecord> read(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader file = new InputStreamReader(
                        Objects.requireNonNull(CheckValues.class.getResourceAsStream(name + ".csv"), name), UTF_8);
                var records = format.parse(file)) {
            return records.getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<CSVRecord> read(String name, String column, String value) {
        return read(name).stream().filter(row -> row.get(column).equals(value)).toList();
    }

    /** The stays of one group, or of all. */
    static List<Stay> stays(String name, String group) {
        return read(name).stream()
                .filter(row -> group.equals("all") || row.get("group").equals(group))
                .map(CheckValues::stay)
                .collect(Collectors.toList());
    }

    static Stay stay(CSVRecord row) {
        return Stay.of(Integer.parseInt(row.get("time")), row.get("event").equals("1") ? Exit.SOLD : Exit.OPEN);
    }

    /** Nine digits, or NaN where R has none. */
    static void assertLike(double value, String expected, String what) {
        if (expected.equals("NA") || expected.equals("Inf")) {
            assertThat(Double.isNaN(value) || Double.isInfinite(value))
                    .as("%s is %s", what, value)
                    .isTrue();
        } else {
            double wanted = Double.parseDouble(expected);
            assertThat(value).as(what).isCloseTo(wanted, within(Math.max(1e-15, Math.abs(wanted) * 1e-9)));
        }
    }
}
