package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class DownloadsTest {

    @Test
    void aSecondOneIsToldToComeAgainAndNothingOfItIsWritten() throws IOException {
        Downloads downloads = new Downloads(Duration.ofMillis(1));
        List<String> written = new ArrayList<>();

        downloads.alone(() -> {
            written.add("first");
            assertThatThrownBy(() -> downloads.alone(() -> written.add("second")))
                    .isInstanceOf(Busy.class);
        });
        downloads.alone(() -> written.add("third"));

        assertThat(written).containsExactly("first", "third");
    }

    @Test
    void aSecondOneWaitsForAShortFirst() throws Exception {
        Downloads downloads = new Downloads(Duration.ofMinutes(1));
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        List<String> written = new ArrayList<>();
        CompletableFuture<Void> first = CompletableFuture.runAsync(() -> write(downloads, () -> {
            begun.countDown();
            await(goOn);
            written.add("first");
        }));
        begun.await();
        CompletableFuture<Void> second =
                CompletableFuture.runAsync(() -> write(downloads, () -> written.add("second")));
        goOn.countDown();
        CompletableFuture.allOf(first, second).join();

        assertThat(written).containsExactly("first", "second");
    }

    @Test
    void oneThatBreaksOffKeepsNobodyWaiting() throws IOException {
        Downloads downloads = new Downloads(Duration.ZERO);
        assertThatIOException()
                .isThrownBy(() -> downloads.alone(() -> {
                    throw new IOException("the device went away");
                }));

        List<String> written = new ArrayList<>();
        downloads.alone(() -> written.add("next"));

        assertThat(written).containsExactly("next");
    }

    private static void write(Downloads downloads, Downloads.Writing file) {
        try {
            downloads.alone(file);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }
}
