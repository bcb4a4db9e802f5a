package patinary.durable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files of one kind that are not whole yet. They bear a name that says so until they are, and by that name what a killed program
 * left of them is found; files with other names are never touched.
 */
public final class HalfWritten {

    private static final String END = ".part";
    private static final Duration SURELY_DEAD = Duration.ofDays(1);

    private final String begin;

    /** @param begin how the names of this kind begin */
    public HalfWritten(String begin) {
        this.begin = begin;
    }

    /**
     * Makes a new, empty file, which nobody else has.
     *
     * @throws IOException also where the folder does not let one be made
     */
    public Path in(Path folder) throws IOException {
        return Files.createTempFile(folder, begin, END);
    }

    /** Takes away what nobody wrote to for a day before {@code now}: whoever began it is not at work any more. */
    public void sweep(Path folder, Instant now) throws IOException {
        for (Path part : parts(folder)) {
            if (Files.getLastModifiedTime(part).toInstant().isBefore(now.minus(SURELY_DEAD))) {
                Files.deleteIfExists(part);
            }
        }
    }

    private List<Path> parts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> isPart(file.getFileName().toString())).toList();
        }
    }

    private boolean isPart(String name) {
        return name.startsWith(begin) && name.endsWith(END);
    }
}
