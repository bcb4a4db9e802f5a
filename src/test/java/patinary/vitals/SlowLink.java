package patinary.vitals;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Arrays;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.locks.LockSupport;

/**
 * A link as slow as a phone's in a shop, between a browser and a program on the same machine: 150 ms there and back, 1.6
 * Mbit/s down, 0.75 Mbit/s up, shared by all connections ("slow 4G" of the common lab settings). A new connection pays
 * one way there and back before its first byte, as TCP does; TLS pays for its own. Lost packets and the slow start of TCP
 * are not modelled.
 */
final class SlowLink implements AutoCloseable {

    private static final long ONE_WAY = 75_000_000L;
    private static final long SECOND = 1_000_000_000L;
    private static final int CHUNK = 1460;

    private final ServerSocket door;
    private final int target;
    private final Lane down = new Lane(1_600_000);
    private final Lane up = new Lane(750_000);

    SlowLink(int target) throws IOException {
        this.target = target;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        thread(this::accept);
    }

    int port() {
        return door.getLocalPort();
    }

    @Override
    public void close() throws IOException {
        door.close();
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket near = door.accept();
                Socket far = new Socket(InetAddress.getLoopbackAddress(), target);
                near.setTcpNoDelay(true);
                far.setTcpNoDelay(true);
                carry(near, far, up, 2 * ONE_WAY);
                carry(far, near, down, 0);
            } catch (IOException closed) {
                // The next guest, or the end of the measurement.
            }
        }
    }

    private void carry(Socket from, Socket to, Lane lane, long greeting) throws IOException {
        BlockingQueue<Parcel> onTheWay = new LinkedBlockingQueue<>();
        InputStream in = from.getInputStream();
        OutputStream out = to.getOutputStream();
        thread(() -> {
            byte[] buffer = new byte[CHUNK];
            long extra = greeting;
            try {
                for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                    onTheWay.add(new Parcel(Arrays.copyOf(buffer, read), lane.arrival(read) + extra));
                    extra = 0;
                }
            } catch (IOException closed) {
                // Ends like a connection that was closed in order.
            }
            onTheWay.add(new Parcel(new byte[0], 0));
        });
        thread(() -> deliver(onTheWay, out, to));
    }

    private static void deliver(BlockingQueue<Parcel> onTheWay, OutputStream out, Socket to) {
        try (to) {
            for (Parcel parcel = onTheWay.take(); parcel.bytes().length > 0; parcel = onTheWay.take()) {
                for (long left = parcel.due() - System.nanoTime(); left > 0; left = parcel.due() - System.nanoTime()) {
                    LockSupport.parkNanos(left);
                }
                out.write(parcel.bytes());
                out.flush();
            }
        } catch (IOException closed) {
            // The browser hung up.
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static void thread(Runnable work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (UncheckedIOException closed) {
                // Told by the other side.
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    private record Parcel(byte[] bytes, long due) {}

    /** One direction: a parcel starts when the one before it has left. */
    private static final class Lane {

        private final long bitsPerSecond;
        private long free = System.nanoTime();

        private Lane(long bitsPerSecond) {
            this.bitsPerSecond = bitsPerSecond;
        }

        private synchronized long arrival(int bytes) {
            free = Math.max(free, System.nanoTime()) + bytes * 8L * SECOND / bitsPerSecond;
            return free + ONE_WAY;
        }
    }
}
