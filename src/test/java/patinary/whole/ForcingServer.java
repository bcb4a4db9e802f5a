package patinary.whole;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A PostgreSQL server of a test's own that forces what it confirms, as one of a shop does and those of the other tests do not.
 * All its processes can be killed at once, and it comes up again with what it had.
 */
final class ForcingServer implements AutoCloseable {

    private final Path data;
    private @Nullable EmbeddedPostgres server;

    ForcingServer(Path data) {
        this.data = data;
    }

    void start() throws IOException {
        server = EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setPort(server == null ? 0 : server.getPort())
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                .start();
    }

    String url() {
        return started().getJdbcUrl("postgres", "postgres");
    }

    /** SIGKILL for the postmaster and all that it started. */
    void kill() throws IOException {
        long postmaster = Long.parseLong(
                Files.readAllLines(data.resolve("postmaster.pid")).get(0).strip());
        ProcessHandle root = ProcessHandle.of(postmaster).orElseThrow();
        List<ProcessHandle> all =
                Stream.concat(Stream.of(root), root.descendants()).toList();
        all.forEach(ProcessHandle::destroyForcibly);
        all.forEach(process -> process.onExit().join());
        // Lets go of the folder, which it holds for as long as it takes itself to be running.
        started().close();
    }

    @Override
    public void close() throws IOException {
        if (server != null) {
            server.close();
        }
    }

    private EmbeddedPostgres started() {
        if (server == null) {
            throw new IllegalStateException("The server was not started");
        }
        return server;
    }
}
