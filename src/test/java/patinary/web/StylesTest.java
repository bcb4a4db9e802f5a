package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A brace that is never closed makes all that follows it count on narrow screens alone, and no browser says so. */
class StylesTest {

    @Test
    void everyBlockIsClosed() throws IOException {
        String styles = Files.readString(Path.of("src/main/resources/static/css/patinary.css"))
                .replaceAll("(?s)/\\*.*?\\*/", "");
        int depth = 0;
        for (String line : styles.split("\n")) {
            assertThat(line.startsWith("@media") && depth > 0)
                    .as("inside another block: " + line)
                    .isFalse();
            for (char character : line.toCharArray()) {
                depth += character == '{' ? 1 : character == '}' ? -1 : 0;
            }
            assertThat(depth).as(line).isBetween(0, 2);
        }
        assertThat(depth).isZero();
    }
}
