package patinary.slips;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;

/** Runs the optional reading program: one at a time, never through a shell, never for longer than its limit. */
final class ReadingProgram {

    /** It is not there, took too long or failed. */
    static final class Failed extends IOException {

        private static final long serialVersionUID = 1L;

        Failed(String why) {
            super(why);
        }
    }

    static final int SECONDS = 20;
    private static final int MOST_BYTES = 1 << 20;

    private final Semaphore turn = new Semaphore(1);
    private final String program;
    private final int seconds;

    ReadingProgram(String program) {
        this(program, SECONDS);
    }

    ReadingProgram(String program, int seconds) {
        this.program = program;
        this.seconds = seconds;
    }

    boolean isInstalled() {
        try {
            Process process = start(List.of(program, "--version"), Path.of("."), ProcessBuilder.Redirect.DISCARD);
            return finish(process) && process.exitValue() == 0;
        } catch (IOException missing) {
            return false;
        }
    }

    /** @throws Failed where the program is missing, fails, or does not end in time */
    String read(BufferedImage picture) throws IOException {
        if (!turn.tryAcquire()) {
            throw new Failed("busy");
        }
        Path folder = Files.createTempDirectory("patinary-slip");
        Path image = folder.resolve("slip.png");
        Path words = folder.resolve("words.tsv");
        try {
            ImageIO.write(picture, "png", image.toFile());
            List<String> command = List.of(program, image.toString(), "stdout", "--psm", "6", "-l", "eng", "tsv");
            Process process = start(command, folder, ProcessBuilder.Redirect.to(words.toFile()));
            if (!finish(process)) {
                throw new Failed("too slow");
            }
            if (process.exitValue() != 0) {
                throw new Failed("exit " + process.exitValue());
            }
            return head(words);
        } finally {
            Files.deleteIfExists(image);
            Files.deleteIfExists(words);
            Files.deleteIfExists(folder);
            turn.release();
        }
    }

    private static String head(Path words) throws IOException {
        try (InputStream in = Files.newInputStream(words)) {
            return new String(in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
        }
    }

    private static Process start(List<String> command, Path folder, ProcessBuilder.Redirect out) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().put("OMP_THREAD_LIMIT", "1");
        return builder.redirectOutput(out)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private boolean finish(Process process) {
        try {
            if (process.waitFor(seconds, TimeUnit.SECONDS)) {
                return true;
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        process.destroyForcibly();
        return false;
    }
}
