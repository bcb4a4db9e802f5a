package patinary.invented;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;
import patinary.Patinary;
import patinary.insight.PlainNumbers;
import patinary.ledger.Turn;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * How long the pages that read a whole shop take, answered one after the other to a person on the same machine, beside the time in which
 * queries written apart and the same pure sums give the same numbers ({@link PlainNumbers}, {@link PlainFigures}). Each page is looked at three times: at once after a change, when
 * nothing is kept of what was read before, and again; and three seconds after another change. Prints a table for docs/benchmarks.md. {@code
 * .ci/measure-pages [PIECES] [RUNS]} invents a shop and has the packaged program take it in, on both databases; {@code .ci/measure-pages
 * PASSWORD RUNS SETTING...} looks at a shop that is already there, as {@code load} has made it and said the password.
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
            "moves/what-to-pay",
            "year/2025");
    private static final List<String> LOOKED_AT = List.of(
            System.getProperty("patinary.looks.at", String.join(" ", PAGES)).split(" "));
    private static final Pattern PASSWORD = Pattern.compile("password (\\S+)");
    /** A page over a big shop may take long, and how long is the question. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** The program is compiled while it runs: the first answers do not count. A program that has run for days has answered many. */
    private static final int WARM_UP = Integer.getInteger("patinary.looks.before", 3);

    /** From what she saved to the next page that she looks at; by then the program has read ahead what was looked at lately. */
    private static final Duration MOMENT = Duration.ofSeconds(3);

    private static final double MILLION = 1e6;
    private static final int USUAL_PIECES = 2_000;
    private static final int USUAL_RUNS = 5;

    private final int runs;
    private final Visitor visitor;
    private final Change change;
    private final PlainFigures plain;
    private final PlainNumbers numbers;

    private MeasurePages(int runs, Visitor visitor, Change change, PlainFigures plain, PlainNumbers numbers) {
        this.runs = runs;
        this.visitor = visitor;
        this.change = change;
        this.plain = plain;
        this.numbers = numbers;
    }

    public static void main(String[] arguments) throws Exception {
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : USUAL_RUNS;
        if (arguments.length > 2) {
            measure(Arrays.asList(arguments).subList(2, arguments.length), arguments[0], runs);
        } else {
            int pieces = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_PIECES;
            invented(pieces, runs);
        }
        // The unpacked database would keep the program running.
        System.exit(0);
    }

    private static void invented(int pieces, int runs) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("patinary-pages");
        try {
            List<String> settings = TestDatabase.scratch(folder.resolve("data")).stream()
                    .map(setting -> "--" + setting)
                    .toList();
            Path zip = folder.resolve("invented.zip");
            long start = System.nanoTime();
            new InventedShop(1, pieces).write(zip);
            System.out.printf("%,d pieces invented in %.1f s%n", pieces, seconds(start));
            start = System.nanoTime();
            String password = load(zip, folder, settings);
            System.out.printf("taken in in %.1f s%n", seconds(start));
            measure(settings, password, runs);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    private static void measure(List<String> settings, String password, int runs)
            throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(settings);
        all.add("--server.port=0");
        try (ConfigurableApplicationContext program =
                new SpringApplicationBuilder(Patinary.class).run(all.toArray(String[]::new))) {
            Visitor visitor = new Visitor(PATIENCE);
            visitor.visit(program.getEnvironment().getRequiredProperty("local.server.port", Integer.class));
            visitor.fill("sign-in", "sign-in", Map.of("name", "Owner", "password", password));
            LocalDate today = program.getBean(CurrentShop.class).today();
            JdbcClient jdbc = program.getBean(JdbcClient.class);
            PlainNumbers numbers = new PlainNumbers(
                    jdbc,
                    new PlainNumbers.Shop(
                            today,
                            program.getBean(CurrentAims.class).get(),
                            program.getBean(CurrentShop.class).hourlyRate()));
            System.out.println(
                    "| page | at once | slowest | processor time | three seconds on | slowest | again | slowest "
                            + "| the numbers alone | ratio, at once | three seconds on | again |\n|---|---|---|---|---|---|---|---|---|---|---|---|");
            MeasurePages measuring = new MeasurePages(
                    runs,
                    visitor,
                    new Change(jdbc, program.getBean(Turn.class)),
                    new PlainFigures(jdbc, today),
                    numbers);
            for (String page : LOOKED_AT) {
                measuring.measure(page);
            }
        }
    }

    /**
     * A change after which nothing that was read before may be taken for today's: neither by the program nor by the embedded database, which
     * keeps what a query gave while its tables stay as they were.
     */
    private record Change(JdbcClient jdbc, Turn turn) {

        /** Large tables, each with a key and a column that is written as it was. */
        private static final List<String> TABLES = List.of(
                "document id note",
                "posting document_id amount_minor",
                "piece id title",
                "offer_piece offer_id piece_id",
                "sale_piece sale_id piece_id",
                "bench_entry id minutes",
                "bench_piece bench_entry_id piece_id",
                "bench_use bench_entry_id quantity",
                "document_profit document_id profit_minor",
                "supply_stock supply_id quantity",
                "sale_part sale_id price_minor",
                "offer_state offer_id started_on",
                "piece_state piece_id found_on",
                "piece_figures piece_id minutes",
                "piece_stock piece_id amount_minor",
                "piece_line piece_id worked");

        void make() {
            for (String table : TABLES) {
                String[] words = table.split(" ");
                jdbc.sql("update %1$s set %3$s = %3$s where %2$s = (select %2$s from %1$s fetch first 1 row only)"
                                .formatted(words[0], words[1], words[2]))
                        .update();
            }
            turn.take();
        }
    }

    /** What so many looks at a page took, and what the threads that answer worked for them; in milliseconds. */
    private static final class Looks {

        private final List<Double> times = new ArrayList<>();
        private final List<Double> worked = new ArrayList<>();

        double median() {
            return middle(times);
        }

        String told() {
            return "%,.0f ms | %,.0f ms"
                    .formatted(
                            median(),
                            times.stream().max(Comparator.naturalOrder()).orElseThrow());
        }
    }

    private void measure(String page) throws IOException, InterruptedException {
        Looks changed = new Looks();
        Looks moment = new Looks();
        Looks again = new Looks();
        List<Double> apart = new ArrayList<>();
        boolean beside = false;
        for (int run = -WARM_UP; run < runs; run++) {
            boolean counts = run >= 0;
            change.make();
            look(page, counts ? changed : new Looks());
            look(page, counts ? again : new Looks());
            long start = System.nanoTime();
            beside = numbers.of(page) != null || plain.read(page);
            if (counts) {
                apart.add((System.nanoTime() - start) / MILLION);
                change.make();
                Thread.sleep(MOMENT.toMillis());
                look(page, moment);
            }
        }
        double alone = middle(apart);
        System.out.printf(
                "| `/%s` | %s | %,.0f ms | %s | %s | %s%n",
                page,
                changed.told(),
                middle(changed.worked),
                moment.told(),
                again.told(),
                beside
                        ? "%,.0f ms | %.1f | %.1f | %.1f |"
                                .formatted(
                                        alone,
                                        changed.median() / alone,
                                        moment.median() / alone,
                                        again.median() / alone)
                        : "| | | |");
    }

    private void look(String page, Looks looks) throws IOException, InterruptedException {
        double before = workedSoFar();
        long start = System.nanoTime();
        int status = visitor.get(page).statusCode();
        if (status != 200) {
            throw new IllegalStateException("/" + page + " answered " + status);
        }
        looks.times.add((System.nanoTime() - start) / MILLION);
        looks.worked.add(workedSoFar() - before);
    }

    private static double middle(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    /** What the threads that answer have worked, with the embedded database, which works in them; says more than the clock of a busy machine. */
    private static double workedSoFar() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
                        .filter(thread ->
                                thread != null && thread.getThreadName().startsWith("http-nio"))
                        .mapToLong(thread -> Math.max(0, threads.getThreadCpuTime(thread.getThreadId())))
                        .sum()
                / MILLION;
    }

    private static String load(Path zip, Path folder, List<String> settings) throws IOException, InterruptedException {
        Path said = folder.resolve("load.txt");
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx3g",
                "-jar",
                Path.of("target", "patinary.jar").toAbsolutePath().toString(),
                "load",
                zip.toString()));
        line.addAll(settings);
        int ended = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        Matcher password = PASSWORD.matcher(Files.readString(said));
        if (ended != 0 || !password.find()) {
            throw new IllegalStateException("Not taken in: " + Files.readString(said));
        }
        return password.group(1);
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) / 1e9;
    }
}
