package patinary.backup;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * How a command reaches the program that has the shop open, when only that program may read the database: by a file in the data
 * folder, which is answered by another. Nothing listens on the network for it; whoever may write into the data folder may
 * read the whole shop anyway.
 */
public final class AskBox {

    /** What came of it, in words. */
    public record Answer(boolean good, String told) {}

    /** What is asked for: a backup at a file, or at the usual place where it is empty. */
    record Ask(String what, String file) {}

    /** Carries out what is asked for. */
    @FunctionalInterface
    interface Answering {

        Answer to(Ask ask);
    }

    private static final String ASKED = ".ask";
    private static final String TAKEN = ".taken";
    private static final String ANSWERED = ".answer";
    private static final long BETWEEN_LOOKS = 250;

    private final Path folder;

    public AskBox(Path data) {
        this.folder = data.resolve("asks");
    }

    /**
     * Asks, and waits until it is done.
     *
     * @param looks how often to look, four times a second, whether anybody takes it up
     * @return nothing where nobody does
     */
    public Optional<Answer> ask(String what, String file, int looks) throws IOException, InterruptedException {
        Files.createDirectories(folder);
        String id = UUID.randomUUID().toString();
        Properties ask = new Properties();
        ask.setProperty("what", what);
        ask.setProperty("file", file);
        store(ask, folder.resolve(id + ASKED));
        for (int look = 0; look < looks && Files.exists(folder.resolve(id + ASKED)); look++) {
            Thread.sleep(BETWEEN_LOOKS);
        }
        if (Files.deleteIfExists(folder.resolve(id + ASKED))) {
            return Optional.empty();
        }
        Path answer = folder.resolve(id + ANSWERED);
        while (!Files.exists(answer)) {
            Thread.sleep(BETWEEN_LOOKS);
        }
        Properties told = load(answer);
        Files.delete(answer);
        return Optional.of(new Answer(Boolean.parseBoolean(told.getProperty("good")), told.getProperty("told", "")));
    }

    /** Takes up what was asked for, each by one program only, and answers it. */
    void look(Answering answering) throws IOException {
        for (Path asked : asked()) {
            Path taken = other(asked, TAKEN);
            try {
                Files.move(asked, taken, StandardCopyOption.ATOMIC_MOVE);
            } catch (NoSuchFileException takenByAnother) {
                continue;
            }
            Properties ask = load(taken);
            Answer answer = answering.to(new Ask(ask.getProperty("what", ""), ask.getProperty("file", "")));
            Properties told = new Properties();
            told.setProperty("good", String.valueOf(answer.good()));
            told.setProperty("told", answer.told());
            store(told, other(asked, ANSWERED));
            Files.delete(taken);
        }
    }

    private List<Path> asked() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ASKED))
                    .sorted()
                    .toList();
        }
    }

    private static Path other(Path asked, String ending) {
        String name = asked.getFileName().toString();
        return asked.resolveSibling(name.substring(0, name.length() - ASKED.length()) + ending);
    }

    /** Under another name first, so that nobody reads half of it. */
    private void store(Properties properties, Path file) throws IOException {
        Path part = Files.createTempFile(folder, "ask", ".part");
        try (Writer writer = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
            properties.store(writer, null);
        }
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private static Properties load(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }
}
