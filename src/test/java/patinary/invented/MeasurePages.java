package patinary.invented;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.springframework.util.FileSystemUtils;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * How long the pages that read a whole shop take, with an invented shop of any size: the packaged program takes it in and
 * answers each page a few times, one after the other, from the same machine. Prints a table for docs/benchmarks.md.
 * {@code .ci/measure-pages [PIECES] [RUNS]} runs it on both databases.
 */
final class MeasurePages {

    private static final List<String> PAGES = List.of(
            "",
            "pieces",
            "sales",
            "supplies",
            "moves",
            "moves/money",
            "moves/next",
            "moves/seasons",
            "moves/hours",
            "moves/days",
            "year/2025");
    private static final Pattern PASSWORD = Pattern.compile("password (\\S+)");
    /** A page over a big shop may take long, and how long is the question. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private static final long MILLION = 1_000_000;

    private final Path folder;
    private final List<String> settings;

    private MeasurePages(Path folder) {
        this.folder = folder;
        settings = TestDatabase.scratch(folder.resolve("data")).stream()
                .map(setting -> "--" + setting)
                .toList();
    }

    public static void main(String[] arguments) throws Exception {
        int pieces = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2_000;
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
        Path folder = Files.createTempDirectory("patinary-pages");
        try {
            new MeasurePages(folder).run(pieces, runs);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
        // The unpacked database would keep the program running.
        System.exit(0);
    }

    private void run(int pieces, int runs) throws IOException, InterruptedException {
        Path zip = folder.resolve("invented.zip");
        long start = System.nanoTime();
        new InventedShop(1, pieces).write(zip);
        System.out.printf("%,d pieces invented in %.1f s%n", pieces, seconds(start));
        start = System.nanoTime();
        String password = load(zip);
        System.out.printf("taken in in %.1f s%n", seconds(start));
        int port;
        try (ServerSocket socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        Process server = program("serve", List.of("--server.port=" + port)).start();
        try {
            Visitor visitor = signedIn(port, password);
            System.out.println("| page | median | slowest |\n|---|---|---|");
            for (String page : PAGES) {
                measure(visitor, page, runs);
            }
        } finally {
            server.destroy();
            server.waitFor();
        }
    }

    private static void measure(Visitor visitor, String page, int runs) throws IOException, InterruptedException {
        long[] times = new long[runs];
        for (int run = 0; run <= runs; run++) {
            long start = System.nanoTime();
            int status = visitor.get(page).statusCode();
            if (status != 200) {
                throw new IllegalStateException("/" + page + " answered " + status);
            }
            // The first answer warms up and does not count.
            if (run > 0) {
                times[run - 1] = (System.nanoTime() - start) / MILLION;
            }
        }
        Arrays.sort(times);
        System.out.printf("| `/%s` | %,d ms | %,d ms |%n", page, times[runs / 2], times[runs - 1]);
    }

    private String load(Path zip) throws IOException, InterruptedException {
        Path said = folder.resolve("load.txt");
        Process load = program("load", List.of(zip.toString()))
                .redirectOutput(said.toFile())
                .start();
        int ended = load.waitFor();
        Matcher password = PASSWORD.matcher(Files.readString(said));
        if (ended != 0 || !password.find()) {
            throw new IllegalStateException("Not taken in: " + Files.readString(said));
        }
        return password.group(1);
    }

    private ProcessBuilder program(String command, List<String> more) {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx3g",
                "-jar",
                Path.of("target", "patinary.jar").toAbsolutePath().toString(),
                command));
        line.addAll(more);
        line.addAll(settings);
        return new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log.txt").toFile());
    }

    private static Visitor signedIn(int port, String password) throws IOException, InterruptedException {
        Visitor visitor = new Visitor(PATIENCE);
        visitor.visit(port);
        Awaitility.await()
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(200))
                .ignoreExceptionsInstanceOf(IOException.class)
                .until(() -> visitor.get("actuator/health").statusCode() == 200);
        visitor.fill("sign-in", "sign-in", Map.of("name", "Owner", "password", password));
        return visitor;
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) / 1e9;
    }
}
