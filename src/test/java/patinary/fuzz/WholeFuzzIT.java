package patinary.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;
import org.springframework.web.context.request.RequestContextHolder;
import patinary.exchange.ArchiveRefused;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.ledger.Check;
import patinary.ledger.Finding;
import patinary.testing.CleanShop;
import patinary.testing.ShopTest;

/**
 * Every form that a page of the demo shop shows, and every address of the program, with answers that nobody would give. Each is
 * answered with what was done, or with a refusal in words; never with a failure of ours. A refusal leaves every table as it
 * was, and the books are right afterwards.
 *
 * <p>A short run each time; by hand with {@code -Dpatinary.fuzz.rounds=200 -Dpatinary.fuzz.requests=500}. Each round starts from
 * the demo shop and from a seed of its own, {@code patinary.fuzz.seed} and counting, so that a fault can be had again by its
 * round's seed alone.
 */
@ShopTest
class WholeFuzzIT {

    private static final long SEED = 20_251_128;

    @Autowired
    private WebApplicationContext program;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private Check check;

    @Autowired
    private JdbcClient jdbc;

    private MockMvc mvc;
    private Faults faults;

    @BeforeEach
    void quietly() {
        // Not the one of the other tests, which keeps every page until the test has ended.
        mvc = MockMvcBuilders.webAppContextSetup(program)
                .apply(SecurityMockMvcConfigurers.springSecurity())
                .build();
        faults = new Faults();
    }

    @Test
    void everyAddressTakesWhateverComes() throws Exception {
        int rounds = Integer.getInteger("patinary.fuzz.rounds", 1);
        int requests = Integer.getInteger("patinary.fuzz.requests", 150);
        long seed = Long.getLong("patinary.fuzz.seed", SEED);
        demo();
        Crawl crawl = Crawl.of(mvc, program, faults);
        RowCounts counts = new RowCounts(jdbc);
        Round round = new Round(mvc, crawl, counts, faults);
        for (int i = 0; i < rounds; i++) {
            if (i > 0) {
                demo();
            }
            round.run(seed + i, requests);
            // The test's own thread stands in one long request, which would keep the settings of its first look.
            RequestContextHolder.resetRequestAttributes();
            List<Finding> findings = check.run();
            faults.addIf(
                    !findings.isEmpty(), "books after round " + (seed + i), findings.size() + " findings: " + findings);
            if (rounds > 1) {
                System.out.println("round " + (seed + i) + ": " + round + ", " + faults.size() + " faults");
            }
            if (rounds > 1 && i % 4 == 0) {
                crawl.again(mvc, faults, "after round " + (seed + i));
                comesBack(seed + i);
            }
        }
        System.out.println(round);
        assertThat(faults.all()).isEmpty();
        assertThat(crawl.forms()).hasSizeGreaterThan(100);
        assertThat(round.done()).isGreaterThan(requests / 20);
    }

    private void demo() throws IOException {
        CleanShop.afresh(program);
        archive.load(Path.of("db", "demo"), Progress.SILENT);
    }

    /** What was let in goes out into an archive and comes in from it: nothing is stored that the shop itself would refuse. */
    private void comesBack(long seed) throws IOException {
        Path folder = java.nio.file.Files.createTempDirectory("patinary-fuzz");
        try {
            archive.exportFolder(folder, Progress.SILENT);
            CleanShop.afresh(program);
            archive.load(folder, Progress.SILENT);
        } catch (ArchiveRefused refused) {
            refused.errors()
                    .forEach(error -> faults.add(
                            "archive " + error.file() + " " + error.column() + " " + error.message(),
                            "after round " + seed + ": " + error));
        } finally {
            org.springframework.util.FileSystemUtils.deleteRecursively(folder);
        }
    }
}
