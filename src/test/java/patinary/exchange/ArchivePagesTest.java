package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ArchivePagesTest {

    @Test
    void theHandbookSaysWhatTheProgramDoes() throws IOException {
        String page = Files.readString(Path.of("docs", "handbook", "archive.md"));

        ArchiveTables.ALL.forEach(table -> assertThat(page).contains(ArchivePages.section(table)));
        List<String> headings = page.lines()
                .filter(line -> line.startsWith("### "))
                .map(line -> line.substring(4))
                .toList();
        assertThat(headings)
                .containsExactlyElementsOf(
                        ArchiveTables.ALL.stream().map(ArchiveTable::file).toList());
    }
}
