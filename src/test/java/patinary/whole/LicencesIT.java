package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every part that is delivered is under a licence that the project takes, and docs/licences.md tells of each. Reads the bill of
 * materials that {@code mvn package} writes; {@code main} writes the page anew.
 */
class LicencesIT {

    private static final Path BILL = Path.of("target", "classes", "META-INF", "sbom", "application.cdx.json");
    private static final Path PAGE = Path.of("docs", "licences.md");
    private static final String TABLE = "| part | licence |\n|---|---|\n";

    /** One of these is enough where a part may be had under any of several. */
    private static final Set<String> TAKEN = Set.of(
            "Apache-2.0",
            "MIT",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "BSD-4-Clause",
            "EPL-2.0",
            "MPL-2.0",
            "CC0-1.0",
            "Bouncy Castle Licence");

    @Test
    void everyPartIsUnderALicenceThatIsTaken() throws IOException {
        Map<String, Set<String>> parts = parts();

        assertThat(parts).hasSizeGreaterThan(100);
        assertThat(parts.entrySet().stream()
                        .filter(part -> part.getValue().stream().noneMatch(TAKEN::contains))
                        .toList())
                .isEmpty();
    }

    @Test
    void thePageTellsOfEachAndOfNoOther() throws IOException {
        assertThat(Files.readString(PAGE)).endsWith(table());
    }

    public static void main(String[] none) throws IOException {
        String page = Files.readString(PAGE);
        Files.writeString(PAGE, page.substring(0, page.indexOf(TABLE)) + table());
    }

    private static String table() throws IOException {
        List<String> rows = new ArrayList<>();
        parts().forEach((part, licences) -> rows.add("| " + part + " | " + String.join(", ", licences) + " |\n"));
        return TABLE + String.join("", rows);
    }

    private static Map<String, Set<String>> parts() throws IOException {
        Map<String, Set<String>> parts = new TreeMap<>();
        for (JsonNode part : new JsonMapper().readTree(Files.readString(BILL)).path("components")) {
            parts.put(
                    part.path("group").asString() + ":" + part.path("name").asString(),
                    StreamSupport.stream(part.path("licenses").spliterator(), false)
                            .map(LicencesIT::name)
                            .collect(Collectors.toCollection(TreeSet::new)));
        }
        return parts;
    }

    private static String name(JsonNode licence) {
        String expression = licence.path("expression").asString("");
        JsonNode one = licence.path("license");
        String id = one.path("id").asString("");
        return !expression.isEmpty()
                ? expression
                : !id.isEmpty() ? id : one.path("name").asString("");
    }
}
