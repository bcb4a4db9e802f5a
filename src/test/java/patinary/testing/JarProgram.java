package patinary.testing;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;

/** The packaged program in a process of its own, which can be killed as a power user or a crash would. */
public final class JarProgram implements AutoCloseable {

    private static final List<String> SMALL = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m");

    private static @Nullable Path unpacked;

    private final Process process;
    private final int port;

    private JarProgram(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts the jar that the build made and waits until it answers. */
    public static JarProgram start(Path log, List<String> properties) throws IOException {
        return startAt(freePort(), log, properties);
    }

    /** The same where it was before, so that what knew its address finds it again. */
    public static JarProgram startAt(int port, Path log, List<String> properties) throws IOException {
        Path home = unpacked();
        List<String> command = new ArrayList<>(List.of(java()));
        command.addAll(SMALL);
        command.add("-XX:SharedArchiveFile=" + home.resolve("classes.jsa"));
        properties.forEach(property -> command.add("-D" + property));
        command.addAll(List.of("-Dserver.port=" + port, "-jar", jar(home)));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                .start();
        JarProgram program = new JarProgram(process, port);
        try {
            program.awaitAnswer();
        } catch (RuntimeException neverAnswered) {
            process.destroyForcibly();
            throw neverAnswered;
        }
        return program;
    }

    /** Does one errand of the jar to its end and gives what it ended with. */
    public static int run(Path log, List<String> properties, String... errand)
            throws IOException, InterruptedException {
        Path home = unpacked();
        List<String> command = new ArrayList<>(List.of(java()));
        command.addAll(SMALL);
        command.add("-XX:SharedArchiveFile=" + home.resolve("classes.jsa"));
        properties.forEach(property -> command.add("-D" + property));
        command.addAll(List.of("-jar", jar(home)));
        command.addAll(List.of(errand));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                .start()
                .waitFor();
    }

    /**
     * The jar, unpacked by its own tool, and an archive of its classes: a test that starts the program twenty times then waits
     * half as long. Made once for a run, with a database of its own.
     */
    private static synchronized Path unpacked() throws IOException {
        if (unpacked == null) {
            Path home = Files.createTempDirectory("patinary-jar");
            home.toFile().deleteOnExit();
            run(
                    home,
                    java(),
                    "-Djarmode=tools",
                    "-jar",
                    System.getProperty("patinary.jar"),
                    "extract",
                    "--destination",
                    "program");
            List<String> once = new ArrayList<>(List.of(java()));
            once.addAll(SMALL);
            once.addAll(List.of(
                    "-XX:ArchiveClassesAtExit=" + home.resolve("classes.jsa"),
                    "-Dspring.context.exit=onRefresh",
                    "-Dpatinary.data=" + home.resolve("scratch"),
                    "-Dserver.port=0",
                    "-jar",
                    jar(home)));
            run(home, once.toArray(String[]::new));
            unpacked = home;
        }
        return unpacked;
    }

    private static void run(Path home, String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(home.resolve("unpacking.log").toFile())
                .start();
        try {
            if (!process.waitFor(600, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException("Could not unpack the jar: " + Files.readString(home.resolve("unpacking.log")));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }

    private static String jar(Path home) {
        return home.resolve(Path.of("program", "patinary.jar")).toString();
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    public int port() {
        return port;
    }

    /** SIGKILL: the program gets no chance to tidy up. */
    public void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor(20, TimeUnit.SECONDS);
    }

    /** SIGTERM: the program is told to end, and does so in its own time. */
    public void tellToEnd() {
        process.destroy();
    }

    /** Waits until the program has ended. @return what it ended with */
    public int ended() throws InterruptedException {
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            throw new IllegalStateException("The program does not end");
        }
        return process.exitValue();
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }

    private void awaitAnswer() {
        Visitor visitor = new Visitor();
        visitor.visit(port);
        Awaitility.await()
                .atMost(300, TimeUnit.SECONDS)
                .pollInterval(200, TimeUnit.MILLISECONDS)
                .until(() -> {
                    if (!process.isAlive()) {
                        throw new IllegalStateException("The program ended with " + process.exitValue());
                    }
                    try {
                        return visitor.get("actuator/health").statusCode() == 200;
                    } catch (IOException notYet) {
                        return false;
                    }
                });
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
