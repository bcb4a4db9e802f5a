package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;

/** The packed program as people start it, on an empty database of its own. */
class CommandsIT {

    private record Ended(int code, String out) {}

    @TempDir
    private Path folder;

    private List<String> database = List.of();

    @BeforeEach
    void openDatabase() {
        database = TestDatabase.scratch(folder.resolve("data"));
    }

    @Test
    void loadsExportsAndChecks() throws Exception {
        Ended load = run("load", Path.of("db", "demo").toAbsolutePath().toString());
        assertThat(load.code()).as(load.out()).isZero();
        assertThat(load.out()).contains("Loaded: Fern and Fable", "Sign in as Owner");

        Ended check = run("check");
        assertThat(check.code()).as(check.out()).isZero();

        Ended export = run("export", folder.resolve("out").toString());
        assertThat(export.code()).as(export.out()).isZero();
        assertThat(Files.mismatch(folder.resolve("out").resolve("manifest.csv"), Path.of("db", "demo", "manifest.csv")))
                .isEqualTo(-1);

        Ended again = run("load", folder.resolve("out").toString());
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.out()).contains("An archive only goes into an empty one");
    }

    @Test
    void isKindAboutWrongUse() throws Exception {
        Ended wrong = runPacked("lead", "x");

        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.out()).contains("There is no command lead.", "--help");
    }

    /** Unpacked, as the image has it. */
    private Ended run(String... words) throws IOException, InterruptedException {
        Path output = Files.createTempFile(folder, "output", ".txt");
        int code = JarProgram.run(output, database, words);
        return new Ended(code, Files.readString(output));
    }

    /** As it is, which takes twice as long to start. */
    private Ended runPacked(String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(List.of("-jar", System.getProperty("patinary.jar"), "--data=" + folder.resolve("data")));
        command.addAll(List.of(words));
        Path output = Files.createTempFile(folder, "output", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), Files.readString(output));
    }
}
