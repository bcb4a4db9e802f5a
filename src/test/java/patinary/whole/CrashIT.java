package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import patinary.testing.InventedShop;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * What was answered survives the death of the program. Four people work on the packaged program at once, by forms, as a phone
 * delivers, with photos and files of sales; it is killed with SIGKILL at a random moment and looked into while it is dead. It
 * starts again, is sent once more what nobody answered and some of what was answered, and so on. On PostgreSQL every second
 * time all processes of the database are killed too.
 *
 * <p>Three times, or as often as {@code -Dpatinary.kills=200} says. The seed of the moments is printed; another may be given with
 * {@code -Dpatinary.seed}.
 */
class CrashIT {

    private static final int KILLS = Integer.getInteger("patinary.kills", 3);
    private static final long SEED = Long.getLong("patinary.seed", System.nanoTime());
    private static final int PEOPLE = 4;
    /** So many changes are answered at the least before each kill; up to twice as many. */
    private static final int ANSWERS = 3;

    private static final int LONGEST = 1_500;
    private static final Pattern CHANNEL = Pattern.compile("/channels/([0-9a-f-]{36})\"");

    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    private Path folder;

    private final Told told = new Told();
    private final Random random = new Random(SEED);
    private final List<Visitor> people =
            Stream.generate(Visitor::new).limit(PEOPLE).toList();
    private final List<String> properties = new ArrayList<>();
    private ForcingServer server = new ForcingServer(Path.of(""));
    private String channel = "";

    @BeforeEach
    void prepare() throws IOException {
        properties.add("patinary.setup-code=" + TestDatabase.SETUP_CODE);
        properties.add("patinary.data=" + folder);
        if (onServer()) {
            server = new ForcingServer(folder.resolve("server"));
            server.start();
            properties.add("spring.datasource.url=" + server.url());
            properties.add("spring.datasource.username=postgres");
            properties.add("spring.datasource.password=");
        }
    }

    @AfterEach
    void end() throws IOException {
        if (onServer()) {
            server.close();
        }
    }

    @Test
    void whatWasAnsweredIsThereAndThereOnceAfterTheProgramWasKilled() throws Exception {
        System.out.println(KILLS + " kills, -Dpatinary.seed=" + SEED);
        for (int kill = 0; kill < KILLS; kill++) {
            try (JarProgram program = JarProgram.start(folder.resolve("program.log"), properties)) {
                people.forEach(person -> person.visit(program.port()));
                if (kill == 0) {
                    openShop();
                }
                workUntilKilled(program, onServer() && kill % 2 == 1);
            }
            assertWell(kill);
        }
        assertThat(told.answered()).as("they worked: %s", told.ends).isGreaterThanOrEqualTo(ANSWERS * KILLS);
        if (!onServer()) {
            assertThat(JarProgram.run(folder.resolve("check.log"), properties, "check"))
                    .as("the check of the books")
                    .isZero();
        }
        System.out.println(KILLS + " kills: " + told.counts());
    }

    private void openShop() throws IOException, InterruptedException {
        channel = openShopWithChannel(people.get(0));
        for (Visitor person : people.subList(1, PEOPLE)) {
            signIn(person);
        }
    }

    /** @return the id of the one channel */
    static String openShopWithChannel(Visitor visitor) throws IOException, InterruptedException {
        openShop(visitor);
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("id", new UUID(7, 7).toString());
        answers.put("name", "Saturday market");
        answers.put("newPlace", "Cash tin");
        answers.put("rules[0].validFrom", "2025-01-01");
        answers.put("rules[0].percent", "10");
        assertThat(visitor.fill("channels/new", "channels/new", answers).statusCode())
                .isEqualTo(303);
        Matcher id = CHANNEL.matcher(visitor.get("channels").body());
        assertThat(id.find()).isTrue();
        return id.group(1);
    }

    private void workUntilKilled(JarProgram program, boolean databaseToo) throws IOException, InterruptedException {
        List<Thread> threads = people.stream()
                .map(person -> new Thread(new Worker(person, told, new Random(random.nextLong()), channel)))
                .toList();
        int enough = told.answered() + ANSWERS + random.nextInt(ANSWERS);
        threads.forEach(Thread::start);
        // The program has just been started and is slow at first: only once it has answered is there something to lose.
        // How long that takes is the machine's affair, how much there is to lose is the test's.
        Awaitility.await()
                .atMost(60, TimeUnit.SECONDS)
                .pollInterval(20, TimeUnit.MILLISECONDS)
                .until(() -> told.answered() >= enough || threads.stream().noneMatch(Thread::isAlive));
        TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST));
        if (databaseToo) {
            server.kill();
        }
        program.kill();
        for (Thread thread : threads) {
            thread.join(30_000);
        }
        if (databaseToo) {
            server.start();
        }
    }

    private void assertWell(int kill) throws IOException, SQLException {
        List<String> faults = new AfterDeath(folder, onServer() ? server.url() : "").faults(told);
        assertThat(faults).as("after kill %s, seed %s", kill, SEED).isEmpty();
        assertThat(told.wrong())
                .as("answers before kill %s, seed %s", kill, SEED)
                .isEmpty();
        if (kill % 10 == 9) {
            System.out.println("after " + (kill + 1) + " kills: " + told.counts());
        }
    }

    private static boolean onServer() {
        return System.getProperty("patinary.test.database", "h2").equals("postgresql");
    }

    static void openShop(Visitor visitor) throws IOException, InterruptedException {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("code", TestDatabase.SETUP_CODE);
        answers.put("ownerName", InventedShop.OWNER);
        answers.put("password", InventedShop.PASSWORD);
        answers.put("shopName", InventedShop.NAME);
        answers.put("currency", "USD");
        answers.put("taxTable", "plain");
        answers.put("costingMethod", "FIFO");
        answers.put("firstDay", "2025-01-01");
        answers.put("timeZone", "UTC");
        answers.put("next", "later");
        assertThat(visitor.fill("setup", "setup", answers).statusCode()).isEqualTo(303);
        signIn(visitor);
    }

    private static void signIn(Visitor visitor) throws IOException, InterruptedException {
        Map<String, String> signIn = Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD);
        assertThat(visitor.fill("sign-in", "sign-in", signIn).statusCode()).isBetween(302, 303);
    }
}
