package patinary.testing;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;

/** The packaged program in a process of its own, which can be killed as a power user or a crash would. */
public final class JarProgram implements AutoCloseable {

    private final Process process;
    private final int port;

    private JarProgram(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts the jar that the build made and waits until it answers. */
    public static JarProgram start(Path log, List<String> properties) throws IOException {
        int port = freePort();
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx256m"));
        properties.forEach(property -> command.add("-D" + property));
        command.addAll(List.of("-Dserver.port=" + port, "-jar", System.getProperty("patinary.jar")));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                .start();
        JarProgram program = new JarProgram(process, port);
        program.awaitAnswer();
        return program;
    }

    public int port() {
        return port;
    }

    /** SIGKILL: the program gets no chance to tidy up. */
    public void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor(20, TimeUnit.SECONDS);
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }

    private void awaitAnswer() {
        Visitor visitor = new Visitor();
        visitor.visit(port);
        Awaitility.await()
                .atMost(90, TimeUnit.SECONDS)
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
