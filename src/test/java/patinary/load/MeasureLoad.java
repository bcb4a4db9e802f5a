package patinary.load;

import java.io.IOException;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import patinary.testing.Visitor;

/**
 * Many people at one program at once; {@code .ci/measure-load} starts the program, and this on a core of its own:
 *
 * <ul>
 *   <li>{@code warm PORT PASSWORD TIMES}: one person does each kind of step so many times, as a program that has run for days has done.
 *   <li>{@code people PORT PASSWORD COUNT SECONDS}: each does a step of the {@link Mix}, reads for two seconds on average, and goes on.
 *   <li>{@code list PORT NAME PASSWORD PATH SECONDS}: eight connections ask for one page as fast as it is answered.
 * </ul>
 */
final class MeasureLoad {

    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final double READING_MILLIS = 2_000;
    private static final int CONNECTIONS = 8;
    private static final int SECOND = 1_000;
    private static final double MILLION = 1e6;

    private record Step(String what, double millis, boolean good) {}

    private MeasureLoad() {}

    public static void main(String[] arguments) throws Exception {
        int port = Integer.parseInt(arguments[1]);
        switch (arguments[0]) {
            case "warm" -> warm(port, arguments[2], Integer.parseInt(arguments[3]));
            case "people" -> people(port, arguments[2], Integer.parseInt(arguments[3]), Integer.parseInt(arguments[4]));
            default ->
                list(port, Map.of("username", arguments[2], "name", arguments[2], "password", arguments[3]), arguments);
        }
    }

    private static void warm(int port, String password, int times) throws Exception {
        Mix mix = new Mix(signedIn(port, Map.of("name", "Owner", "password", password)), new Random(0));
        mix.lookAround();
        for (int time = 0; time < times; time++) {
            for (String what : Mix.kinds()) {
                mix.does(what, mix.prepared(what));
            }
        }
    }

    private static void people(int port, String password, int count, int seconds) throws Exception {
        List<Callable<List<Step>>> people = new ArrayList<>();
        List<Mix> mixes = new ArrayList<>();
        for (int person = 0; person < count; person++) {
            Visitor visitor = signedIn(port, Map.of("name", "Owner", "password", password));
            Mix mix = new Mix(visitor, new Random(person));
            mix.lookAround();
            mixes.add(mix);
        }
        // The first half minute or so warms up and does not count.
        long start = System.nanoTime() + Duration.ofSeconds(seconds / 2).toNanos();
        long end = start + Duration.ofSeconds(seconds).toNanos();
        mixes.forEach(mix -> people.add(() -> visit(mix, start, end)));
        tell(together(people), seconds);
    }

    private static List<Step> visit(Mix mix, long start, long end) throws IOException, InterruptedException {
        List<Step> steps = new ArrayList<>();
        while (System.nanoTime() < end) {
            double reading = -Math.log(1 - ThreadLocalRandom.current().nextDouble()) * READING_MILLIS;
            Thread.sleep((long) reading);
            String what = mix.next();
            long began = System.nanoTime();
            Step step;
            try {
                String token = mix.prepared(what);
                long asked = System.nanoTime();
                boolean good = mix.does(what, token);
                step = new Step(what, (System.nanoTime() - asked) / MILLION, good);
            } catch (HttpTimeoutException late) {
                step = new Step(what, (System.nanoTime() - began) / MILLION, false);
            }
            if (began >= start) {
                steps.add(step);
            }
        }
        return steps;
    }

    private static void tell(List<Step> steps, int seconds) {
        Map<String, List<Step>> byKind = new TreeMap<>();
        steps.forEach(step ->
                byKind.computeIfAbsent(step.what(), what -> new ArrayList<>()).add(step));
        System.out.println("| what | times | median | 95th of 100 | slowest | errors |\n|---|---|---|---|---|---|");
        byKind.forEach((what, all) -> tell(what.equals(Mix.RECORD) ? what : "`/" + what + "`", all));
        tell("**all**, " + steps.size() / seconds + " a second", steps);
    }

    private static void tell(String what, List<Step> steps) {
        double[] times = steps.stream().mapToDouble(Step::millis).sorted().toArray();
        System.out.printf(
                "| %s | %,d | %,.0f ms | %,.0f ms | %,.0f ms | %d |%n",
                what,
                times.length,
                times[times.length / 2],
                times[(int) Math.ceil(times.length * 0.95) - 1],
                times[times.length - 1],
                steps.stream().filter(step -> !step.good()).count());
    }

    private static void list(int port, Map<String, String> person, String[] arguments) throws Exception {
        String path = arguments[4];
        int seconds = Integer.parseInt(arguments[5]);
        List<Callable<List<Step>>> connections = new ArrayList<>();
        List<Visitor> visitors = new ArrayList<>();
        for (int connection = 0; connection < CONNECTIONS; connection++) {
            visitors.add(signedIn(port, person));
        }
        long start = System.nanoTime() + Duration.ofSeconds(seconds / 2).toNanos();
        long end = start + Duration.ofSeconds(seconds).toNanos();
        visitors.forEach(visitor -> connections.add(() -> ask(visitor, path, start, end)));
        List<Step> steps = together(connections);
        long bad = steps.stream().filter(step -> !step.good()).count();
        System.out.printf("%d requests a second, %d errors%n", steps.size() / seconds, bad);
    }

    private static List<Step> ask(Visitor visitor, String path, long start, long end)
            throws IOException, InterruptedException {
        List<Step> steps = new ArrayList<>();
        while (System.nanoTime() < end) {
            long asked = System.nanoTime();
            boolean good = visitor.get(path).statusCode() == 200;
            if (asked >= start) {
                steps.add(new Step(path, (System.nanoTime() - asked) / MILLION, good));
            }
        }
        return steps;
    }

    private static Visitor signedIn(int port, Map<String, String> person) throws IOException, InterruptedException {
        Visitor visitor = new Visitor(PATIENCE);
        visitor.visit(port);
        int status = visitor.fill("sign-in", "sign-in", person).statusCode();
        if (status != 302 && status != 303) {
            throw new IllegalStateException("Signing in was answered with " + status);
        }
        // One after another, as people come; each password costs the program a good part of a second.
        Thread.sleep(SECOND / 10);
        return visitor;
    }

    private static List<Step> together(List<Callable<List<Step>>> all) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(all.size());
        try {
            List<Step> steps = new ArrayList<>();
            for (Future<List<Step>> one : threads.invokeAll(all)) {
                steps.addAll(one.get());
            }
            return steps;
        } finally {
            threads.shutdown();
        }
    }
}
