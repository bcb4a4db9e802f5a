package patinary.vitals;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/** The link must be slow, or what is measured over it says nothing. */
class SlowLinkTest {

    private static final int BYTES = 40_000;

    @Test
    void takesAsLongAsItSays() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                SlowLink link = new SlowLink(server.getLocalPort())) {
            CompletableFuture<Void> served = CompletableFuture.runAsync(() -> answer(server));
            long begin = System.nanoTime();
            try (Socket client = new Socket(InetAddress.getLoopbackAddress(), link.port())) {
                client.getOutputStream().write(1);
                byte[] got = client.getInputStream().readAllBytes();
                long millis = (System.nanoTime() - begin) / 1_000_000;
                assertThat(got).hasSize(BYTES);
                // 150 ms to connect, 150 ms there and back, 40,000 bytes at 1.6 Mbit/s: 200 ms.
                assertThat(millis).isGreaterThanOrEqualTo(500);
            }
            served.join();
        }
    }

    private static void answer(ServerSocket server) {
        try (Socket guest = server.accept()) {
            guest.getInputStream().read();
            guest.getOutputStream().write(new byte[BYTES]);
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }
}
