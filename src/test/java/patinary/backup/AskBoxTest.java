package patinary.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AskBoxTest {

    @TempDir
    private Path data;

    @Test
    void isAnsweredByOneOfManyProgramsInItsWords() throws Exception {
        AskBox box = new AskBox(data);
        AtomicInteger answered = new AtomicInteger();
        CompletableFuture<Optional<AskBox.Answer>> asking = CompletableFuture.supplyAsync(() -> ask(box, 400));
        ExecutorService programs = Executors.newFixedThreadPool(4);
        try {
            for (int program = 0; program < 4; program++) {
                programs.submit(() -> {
                    while (!asking.isDone()) {
                        box.look(ask -> {
                            answered.incrementAndGet();
                            return new AskBox.Answer(true, ask.what() + " " + ask.file() + "\nzwölf = 12");
                        });
                    }
                    return null;
                });
            }
            assertThat(asking.get(30, TimeUnit.SECONDS))
                    .contains(new AskBox.Answer(true, "backup /a folder/x.zip\nzwölf = 12"));
        } finally {
            programs.shutdownNow();
        }
        assertThat(answered).hasValue(1);
        Awaitility.await().untilAsserted(() -> assertThat(left()).isZero());
    }

    @Test
    void whereNobodyLooksNothingIsLeftBehind() throws IOException {
        assertThat(ask(new AskBox(data), 1)).isEmpty();

        assertThat(left()).isZero();
    }

    private static Optional<AskBox.Answer> ask(AskBox box, int looks) {
        try {
            return box.ask("backup", "/a folder/x.zip", looks);
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private long left() throws IOException {
        try (Stream<Path> files = Files.list(data.resolve("asks"))) {
            return files.count();
        }
    }
}
