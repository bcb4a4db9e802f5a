package patinary.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.FileSystemUtils;

/**
 * Proves a backup in a process of its own, with memory of its own that is bounded: the shop that people work in shares nothing with
 * it but the processor and the disk.
 */
@Component
class ProofProcess {

    private static final String PROGRAM = "patinary.Patinary";
    private static final String PACKED = "org.springframework.boot.loader.launch.JarLauncher";
    private static final long HOURS = 3;

    private final Path data;
    private final String memory;

    ProofProcess(
            @Value("${patinary.data:./data}") Path data, @Value("${patinary.rehearsal.memory:768m}") String memory) {
        this.data = data.toAbsolutePath();
        this.memory = memory;
    }

    /** @throws IOException where the process did not come to an end of its own, with what it said last */
    ProofReport prove(Path file) throws IOException {
        Files.createDirectories(data);
        Path scratch = Files.createTempDirectory(data, "rehearsal");
        try {
            Path report = scratch.resolve("report.properties");
            Path said = scratch.resolve("said.txt");
            run(command(file, scratch, report), said);
            if (!Files.exists(report)) {
                List<String> lines = Files.readAllLines(said);
                throw new IOException(String.join(" ", lines.subList(Math.max(0, lines.size() - 3), lines.size())));
            }
            return ProofReport.read(report);
        } finally {
            FileSystemUtils.deleteRecursively(scratch);
        }
    }

    private List<String> command(Path file, Path scratch, Path report) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + memory,
                "-XX:+UseSerialGC",
                "-Djava.io.tmpdir=" + scratch,
                "-cp",
                System.getProperty("java.class.path"),
                main(),
                "prove",
                file.toAbsolutePath().toString()));
        command.add("--" + ProofErrand.REPORT + "=" + report);
        return command;
    }

    /** The packed program has a class of its own that begins it. */
    private static String main() {
        try {
            Class.forName(PACKED, false, ClassLoader.getSystemClassLoader());
            return PACKED;
        } catch (ClassNotFoundException unpacked) {
            return PROGRAM;
        }
    }

    private static void run(List<String> command, Path said) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        // What names the shop's own database in the surroundings is none of its business.
        builder.environment().keySet().removeIf(name -> name.startsWith("SPRING_") || name.startsWith("PATINARY_"));
        Process process =
                builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
        try {
            if (!process.waitFor(HOURS, TimeUnit.HOURS)) {
                throw new IOException("It took longer than " + HOURS + " hours");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        } finally {
            process.destroyForcibly();
        }
    }
}
