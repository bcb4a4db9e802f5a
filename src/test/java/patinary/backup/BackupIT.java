package patinary.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.jobs.Leases;
import patinary.shop.CurrentShop;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

@ShopTest
class BackupIT {

    private static final String PAGE = "/shop/backups";

    @Autowired
    private MockMvc web;

    @Autowired
    private Backups backups;

    @Autowired
    private Rehearsals rehearsals;

    @Autowired
    private BackupPlans plans;

    @Autowired
    private BackupRuns runs;

    @Autowired
    private Leases leases;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private CurrentShop shop;

    @Autowired
    private Words words;

    @Autowired
    private JdbcClient jdbc;

    @Value("${patinary.data}")
    private Path data;

    @TempDir
    private Path folder;

    @BeforeEach
    void intoAFolderOfItsOwn() {
        plans.store(new BackupPlan(true, folder.toString(), 3, 2, 3));
    }

    @Test
    void isMadeByAButtonAndTakenToADevice() throws Exception {
        web.perform(post(PAGE + "/now").with(InventedShop.owner())).andExpect(redirectedUrl(PAGE));
        Awaitility.await().until(() -> runs.lastGood().isPresent() && !backups.isRunning());
        web.perform(get(PAGE).with(InventedShop.owner()))
                .andExpect(content().string(containsString("Written and read back")));

        byte[] taken = web.perform(get(PAGE + "/download").with(InventedShop.owner()))
                .andExpect(header().string("Content-Disposition", containsString("shop-backup-")))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        Path file = Files.write(folder.resolve("taken.zip"), taken);

        archive.load(file, Progress.SILENT);
        assertThat(runs.lastGood())
                .hasValueSatisfying(run -> assertThat(run.what()).isEqualTo(BackupRun.What.TAKEN));
    }

    /** Two copies ask at once whether one is due, and one is done with it before the other begins. */
    @Test
    void isMadeOnceWhereAnotherCopyMadeItJustAfterThisOneAsked() throws IOException {
        Clock late = mock(Clock.class);
        AtomicBoolean asked = new AtomicBoolean();
        when(late.instant()).thenAnswer(call -> {
            if (!asked.getAndSet(true)) {
                backups.makeIfDue();
            }
            return Instant.now();
        });
        new Backups(archive, plans, runs, leases, shop, late, words).makeIfDue();
        assertThat(asked).isTrue();
        assertThat(zips()).isEqualTo(1);
        assertThat(jdbc.sql("select count(*) from backup_run").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void isMadeOnceADayByItselfAndTheOldestGo() throws IOException {
        backups.makeIfDue();
        backups.makeIfDue();
        assertThat(zips()).as("one a day").isEqualTo(1);
        Files.createFile(folder.resolve("shop-backup-2025-01-01-030000.zip"));
        Files.createFile(folder.resolve("shop-backup-2025-01-02-030000.zip"));
        yesterday();
        backups.makeIfDue();
        assertThat(zips()).as("two are kept").isEqualTo(2);
        assertThat(folder.resolve("shop-backup-2025-01-01-030000.zip")).doesNotExist();

        yesterday();
        plans.store(new BackupPlan(false, folder.toString(), 3, 2, 3));
        backups.makeIfDue();
        assertThat(runs.count()).isEqualTo(2);
    }

    @Test
    void anotherCopyOfTheProgramThatIsAtItIsLeftToIt() {
        leases.once(
                Backups.JOB,
                Duration.ZERO,
                Duration.ofHours(1),
                () -> assertThat(backups.make(Progress.SILENT)).isEmpty());

        assertThat(runs.count()).isZero();
        assertThat(backups.make(Progress.SILENT)).isPresent();
    }

    @Test
    void aFailureIsToldInWordsAndLeavesNothing() throws Exception {
        Path file = Files.createFile(folder.resolve("a-file"));
        plans.store(new BackupPlan(true, file.resolve("below").toString(), 3, 2, 3));

        assertThat(backups.make(Progress.SILENT))
                .hasValueSatisfying(run -> assertThat(run.good()).isFalse());

        web.perform(get(PAGE).with(InventedShop.owner()))
                .andExpect(content().string(allOf(containsString("went wrong:"), containsString("is not there"))));
        assertThat(runs.lastGood()).isEmpty();
        assertThat(zips()).isZero();
    }

    @Test
    void theFrontPageWarnsTheOwnerUntilThereIsAGoodOneOfLate() throws Exception {
        jdbc.sql("""
                        insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version)
                        values (cast('00000000-0000-4000-8000-00000000000b' as uuid), 'OPENING', 0, date '2025-01-01', '',
                            current_timestamp, 0)
                        """).update();
        var helper = SecurityMockMvcRequestPostProcessors.user("Sam").roles("HELPER");

        web.perform(get("/").with(InventedShop.owner()))
                .andExpect(content().string(containsString("There is no backup of this shop yet")));
        web.perform(get("/").with(helper)).andExpect(content().string(not(containsString("no backup of this shop"))));
        backups.make(Progress.SILENT);
        web.perform(get("/").with(InventedShop.owner()))
                .andExpect(content().string(not(containsString("backup of this shop"))));
        jdbc.sql("update backup_run set started_at = ?")
                .param(OffsetDateTime.now().minusDays(5))
                .update();
        web.perform(get("/").with(InventedShop.owner()))
                .andExpect(content().string(containsString("The last good backup is 5 days old")));
        web.perform(get(PAGE).with(helper)).andExpect(forwardedUrl("/refused"));
    }

    @Test
    void thePlanIsCheckedBesideItsFieldsAndKeepsWhatWasTyped() throws Exception {
        web.perform(post(PAGE + "/plan")
                        .param("folder", "not/from/the/root")
                        .param("atHour", "24")
                        .param("keep", "many")
                        .param("warnAfterDays", "3")
                        .with(InventedShop.owner()))
                .andExpect(status().is(422))
                .andExpect(content()
                        .string(allOf(
                                containsString("A folder is written from the root on"),
                                containsString("A whole number from 0 to 23"),
                                containsString("A whole number from 1 to 60"),
                                containsString("value=\"many\""))));
        web.perform(post(PAGE + "/plan")
                        .param("folder", folder.resolve("none").toString())
                        .param("atHour", "1")
                        .param("keep", "1")
                        .param("warnAfterDays", "3")
                        .with(InventedShop.owner()))
                .andExpect(content().string(containsString("This folder is not there.")));
        web.perform(post(PAGE + "/plan")
                        .param("byItself", "true")
                        .param("folder", "")
                        .param("atHour", "22")
                        .param("keep", "9")
                        .param("warnAfterDays", "30")
                        .with(InventedShop.owner()))
                .andExpect(redirectedUrl(PAGE));
        assertThat(plans.read()).isEqualTo(new BackupPlan(true, "", 22, 9, 30));
        assertThat(plans.isBesideTheShop(plans.read())).isTrue();
    }

    @Test
    void isRestoredFromTheFolderIntoAnEmptyShop() throws Exception {
        String piece = "insert into piece (id, code, title, material, place, note, version)"
                + " values (cast('00000000-0000-4000-8000-00000000000b' as uuid), 'X-1', 'Box', '', '', '', 0)";
        jdbc.sql(piece).update();
        backups.make(Progress.SILENT);
        String name = rehearsals.latest().orElseThrow().getFileName().toString();

        restore(name)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("An archive only goes into an empty one")));
        jdbc.sql("delete from piece").update();
        restore("../" + name)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Choose one of the files")));
        restore(name).andExpect(redirectedUrl("/"));

        assertThat(jdbc.sql("select title from piece").query(String.class).single())
                .isEqualTo("Box");
        Files.write(folder.resolve(name), new byte[] {'P', 'K', 3, 4});
        jdbc.sql("delete from piece").update();
        restore(name)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("This is no zip file, or a damaged one.")));
    }

    private ResultActions restore(String name) throws Exception {
        return web.perform(post(PAGE + "/restore").param("file", name).with(InventedShop.owner()));
    }

    /** In a process of its own, with the classes that this test runs with. */
    @Test
    void aRehearsalSaysWhetherTheBackupComesBackWholeAndWhatTheShopHasSince() throws Exception {
        backups.make(Progress.SILENT);
        jdbc.sql("insert into piece (id, code, title, material, place, note, version)"
                        + " values (cast('00000000-0000-4000-8000-00000000000b' as uuid), 'X-1', 'Box', '', '', '', 0)")
                .update();
        String name = rehearsals.latest().orElseThrow().getFileName().toString();

        web.perform(post(PAGE + "/rehearse")
                        .param("file", "shop-backup-2025-01-01-030000.zip")
                        .with(InventedShop.owner()))
                .andExpect(status().isNotFound());
        web.perform(post(PAGE + "/rehearse").param("file", name).with(InventedShop.owner()))
                .andExpect(redirectedUrl(PAGE));
        Awaitility.await()
                .atMost(2, TimeUnit.MINUTES)
                .until(() -> runs.lastRehearsal().isPresent() && !rehearsals.isRunning());

        web.perform(get(PAGE).with(InventedShop.owner()))
                .andExpect(content()
                        .string(allOf(
                                containsString(InventedShop.NAME + " came back whole: 1 rows and 0 photos"),
                                containsString("Since then the shop has, in its tables: piece +1."))));
        try (Stream<Path> left = Files.list(data)) {
            assertThat(left).noneMatch(file -> file.getFileName().toString().startsWith("rehearsal"));
        }
    }

    /** As the command does it while the program has the database. */
    @Test
    void theRunningProgramIsAskedForOneByAFile() throws Exception {
        Path file = folder.resolve("asked for.zip");

        assertThat(new AskBox(data).ask(BackupErrands.BACKUP, file.toString(), 200))
                .hasValueSatisfying(answer -> assertThat(answer.told()).startsWith(file + ": Written"));

        ShopArchive.readBack(file);
    }

    private void yesterday() {
        jdbc.sql("update backup_run set started_at = ?")
                .param(OffsetDateTime.now().minusDays(1))
                .update();
    }

    private long zips() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !file.endsWith("a-file")).count();
        }
    }
}
