package patinary.yearfolder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.ShopTest;

/** The year that docs/handbook/sample-year.md reckons by hand comes out of the program, number by number as the page has it. */
@ShopTest
class SampleYearIT {

    private static final Path PAGE = Path.of("docs/handbook/sample-year.md");

    @TempDir
    Path disk;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private UnpackedFolder folder;

    @BeforeEach
    void typeTheYear(@Autowired ApplicationContext program) throws Exception {
        SampleYear.type(program);
        folder = UnpackedFolder.of(
                mvc.perform(get("/year/2025.zip").with(owner()))
                        .andReturn()
                        .getResponse()
                        .getContentAsByteArray(),
                disk);
    }

    @Test
    void everyNumberOfThePageIsTheProgramsOwn() throws Exception {
        assertThat(table("| line |", 0, 2))
                .as("the lines")
                .containsExactlyInAnyOrderElementsOf(folder.table("lines").stream()
                        .filter(row -> !row.get("amount").isEmpty()
                                && !row.get("amount").equals("0.00"))
                        .map(row -> row.get("line") + " " + row.get("amount"))
                        .toList());
        assertThat(table("| thing |", 0, 1))
                .as("what is left")
                .containsExactlyInAnyOrderElementsOf(folder.table("stock").stream()
                        .map(row -> row.get("title") + " " + row.get("cost"))
                        .toList());
        assertThat(table("| piece sold |", 0, 1))
                .as("what was sold")
                .containsExactlyInAnyOrderElementsOf(folder.table("cost-of-goods-by-piece").stream()
                        .map(row -> row.get("title") + " " + row.get("cost"))
                        .toList());
        assertThat(table("| day |", 0, 2)).as("the documents").containsExactlyInAnyOrderElementsOf(documents());
        assertThat(SecondRoad.disagreements(folder.path())).isEmpty();
    }

    private List<String> documents() {
        return jdbc.sql("""
                        select d.doc_date, cast(coalesce(sum(p.amount_minor), 0) as bigint) as minor
                        from document d
                        left join posting p on p.document_id = d.id and p.account = 'MONEY'
                        group by d.id, d.doc_date""")
                .query((row, at) -> row.getString(1) + " "
                        + java.math.BigDecimal.valueOf(row.getLong(2), 2).toPlainString())
                .list();
    }

    /** Two cells of each row of the table whose head begins so. */
    private static List<String> table(String head, int first, int second) throws IOException {
        List<String> found = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith(head)) {
                inside = true;
            } else if (inside && !line.startsWith("|")) {
                return found;
            } else if (inside && !line.startsWith("|---")) {
                List<String> cells = Arrays.stream(line.substring(1).split("\\|"))
                        .map(String::strip)
                        .toList();
                found.add(cells.get(first) + " " + cells.get(second));
            }
        }
        throw new AssertionError("The page has no table " + head);
    }
}
