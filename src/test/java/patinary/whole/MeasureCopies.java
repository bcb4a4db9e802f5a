package patinary.whole;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.util.FileSystemUtils;
import patinary.testing.Visitor;

/**
 * One, two and three copies of the packaged program on one PostgreSQL: the same number of changes by the same number of people, spread over the
 * copies, with one sign-in for all. Shows that nothing is lost, nothing is there twice, one piece is sold once, the books are right,
 * and what the program does by itself is done by one copy; and how long a change has the turn of the books, which only one can have at a
 * time. {@code .ci/measure-copies [CHANGES] [COPIES...]}.
 */
final class MeasureCopies {

    private static final int[] USUAL_COPIES = {1, 2, 3};
    private static final int PEOPLE = 6;
    private static final int USUAL = 240;
    /** So many at a time do what only one can. */
    private static final int RIVALS = 3;

    /** Six people wait for one another's turns, on a machine that may do other things besides. */
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private static final int CHANGES_EACH_MEETING = 10;
    private static final int WARM_UP = 20;
    private static final int ALONE = 40;

    private final ManyCopies copies;
    private final Told told = new Told();
    private final Visitor signedIn = new Visitor(PATIENCE);
    private final ExecutorService threads = Executors.newFixedThreadPool(PEOPLE);

    private MeasureCopies(ManyCopies copies) {
        this.copies = copies;
    }

    public static void main(String[] arguments) throws Exception {
        int changes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL;
        int[] counts = arguments.length > 1
                ? Stream.of(arguments).skip(1).mapToInt(Integer::parseInt).toArray()
                : USUAL_COPIES;
        System.out.println(
                "| copies | answered as stored | not now | lost or twice | wrong answers | check | backups, sweeps"
                        + " | changes a second | turn taken | of the turn, each | one alone |\n"
                        + "|---|---|---|---|---|---|---|---|---|---|---|");
        boolean right = true;
        for (int count : counts) {
            Path folder = Files.createTempDirectory("patinary-copies");
            try (ManyCopies copies = ManyCopies.start(folder, count)) {
                right &= new MeasureCopies(copies).measure(count, changes);
            } finally {
                FileSystemUtils.deleteRecursively(folder);
            }
        }
        System.exit(right ? 0 : 1);
    }

    private boolean measure(int count, int changes) throws Exception {
        try {
            signedIn.visit(copies.port(0));
            String channel = CrashIT.openShopWithChannel(signedIn);
            work(1, WARM_UP, channel);
            int before = told.answered();
            TurnWatch.Seen alone = watched(() -> work(1, ALONE, channel));
            double aloneEach = alone.millisFor(told.answered() - before);

            int began = told.answered();
            TurnWatch.Seen all = watched(() -> work(PEOPLE, changes / PEOPLE, channel));
            int answered = told.answered() - began;
            Rivals rivals = new Rivals(windows(RIVALS), threads, told, channel);
            for (int meeting = 0; meeting < Math.max(1, changes / CHANGES_EACH_MEETING); meeting++) {
                rivals.meet();
            }
            return tell(count, answered, all, aloneEach, rivals);
        } finally {
            threads.shutdownNow();
        }
    }

    private boolean tell(int count, int answered, TurnWatch.Seen all, double aloneEach, Rivals rivals)
            throws Exception {
        List<String> faults = copies.look().faults(told);
        int check = copies.check();
        long backups = copies.backups();
        long sweeps = copies.sweeps();
        System.out.printf(
                "| %d | %,d | %d | %d | %d | %s | %d, %d | %.1f | %.0f in 100 | %.1f ms | %.1f ms |%n",
                count,
                told.answered(),
                told.notNow.size(),
                faults.size(),
                told.wrong().size(),
                check == 0 ? "right" : "WRONG",
                backups,
                sweeps,
                answered / all.seconds(),
                100 * all.share(),
                all.millisFor(answered),
                aloneEach);
        System.out.println("not now: " + told.notNow);
        rivals.answers().forEach((what, answers) -> System.out.println(what + ": " + answers));
        faults.forEach(System.out::println);
        told.wrong().forEach(wrong -> System.out.println(wrong.lines().limit(3).toList()));
        return faults.isEmpty() && told.wrong().isEmpty() && check == 0 && backups == 1 && sweeps == 1;
    }

    private TurnWatch.Seen watched(Callable<Void> work) throws Exception {
        try (TurnWatch watch = new TurnWatch(copies.url())) {
            work.call();
            return watch.end();
        }
    }

    private List<Visitor> windows(int number) {
        return IntStream.range(0, number)
                .mapToObj(window -> copies.window(signedIn, window))
                .toList();
    }

    private Void work(int people, int times, String channel) throws Exception {
        List<Callable<Void>> all = new ArrayList<>();
        for (Visitor window : windows(people)) {
            Worker worker = new Worker(window, told, new Random(all.size()), channel);
            all.add(() -> {
                worker.work(times);
                return null;
            });
        }
        for (Future<Void> one : threads.invokeAll(all)) {
            one.get();
        }
        return null;
    }
}
