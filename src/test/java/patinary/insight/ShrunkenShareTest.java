package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Against values computed with R 4.2.2; src/test/resources/patinary/insight/README.md says where they are from. */
class ShrunkenShareTest {

    private static final double TOLERANCE = 1e-9;

    @Test
    void unequalGroupsAreDrawnTowardsAll() throws IOException {
        List<CSVRecord> rows = rows("shrinkage-unequal-n-expected.csv");
        ShrunkenShare shares =
                ShrunkenShare.of(rows.stream().map(ShrunkenShareTest::tries).toList());
        Map<String, Double> scalars = rows("shrinkage-unequal-n-scalars.csv").stream()
                .collect(Collectors.toMap(row -> row.get(0), row -> Double.valueOf(row.get(1))));
        assertThat(shares.worth()).isCloseTo(scalars.get("M"), within(TOLERANCE));
        assertThat(rows).hasSize(8);
        for (CSVRecord row : rows) {
            Estimate share = shares.share(tries(row));
            assertThat(share.value()).isCloseTo(Double.parseDouble(row.get("shrunk")), within(TOLERANCE));
            assertThat(share.low()).isCloseTo(Double.parseDouble(row.get("post_lower")), within(TOLERANCE));
            assertThat(share.high()).isCloseTo(Double.parseDouble(row.get("post_upper")), within(TOLERANCE));
        }
        assertThat(shares.share(new Tries(0, 0)).value()).isCloseTo(scalars.get("mu"), within(TOLERANCE));
    }

    /** The count this page makes: pieces offered at least 90 days ago, sold within 90 days or not; R gives 0.38411 of 151. */
    @Test
    void onlyPiecesThatHadTheirFullTimeAreCounted() throws IOException {
        Tries tries = Tries.NONE;
        for (CSVRecord row : rows("naive-bias-observations.csv")) {
            boolean inTime =
                    Integer.parseInt(row.get("time")) <= 90 && row.get("event").equals("1");
            if (Integer.parseInt(row.get("age")) >= 90) {
                tries = tries.plus(new Tries(1, inTime ? 1 : 0));
            }
        }
        assertThat(tries).isEqualTo(new Tries(151, 58));
        assertThat(tries.share()).isCloseTo(0.38411, within(5e-6));
    }

    /** By hand: every group sold exactly half, so the scatter is 0, rho below 0, and everybody gets the share of all. */
    @Test
    void groupsThatShowNoDifferenceGetTheShareOfAll() {
        ShrunkenShare shares = ShrunkenShare.of(List.of(new Tries(2, 1), new Tries(4, 2), new Tries(6, 3)));
        assertThat(shares.share(new Tries(2, 1)).value()).isEqualTo(0.5);
        assertThat(shares.share(new Tries(2, 1)).ownWeight()).isZero();
    }

    /** By hand: two groups are too few to learn from; 1 of 1 becomes (1 + ½) ÷ (1 + 1) = 0.75 by Jeffreys. */
    @Test
    void whereADifferenceCannotBeToldAGroupStandsAlone() {
        ShrunkenShare shares = ShrunkenShare.of(List.of(new Tries(1, 1), new Tries(9, 3)));
        assertThat(shares.share(new Tries(1, 1)).value()).isCloseTo(0.75, within(TOLERANCE));
        assertThat(shares.share(new Tries(0, 0)).value()).isCloseTo(0.4, within(TOLERANCE));
    }

    private static Tries tries(CSVRecord row) {
        return new Tries(Long.parseLong(row.get("listed")), Long.parseLong(row.get("sold")));
    }

    private static List<CSVRecord> rows(String file) throws IOException {
        InputStream stream = Objects.requireNonNull(ShrunkenShareTest.class.getResourceAsStream(file));
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        }
    }
}
