package patinary.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * Starts the database that {@code -Dpatinary.test.database} names, once for all tests of a run. An unknown name fails: a
 * database that was asked for is never silently left out.
 *
 * <p>PostgreSQL runs in a container where {@code -Dpatinary.test.containers=true} (or the environment's
 * {@code PATINARY_TEST_CONTAINERS=true}) allows it and an engine answers; otherwise as an unpacked program.
 */
public final class TestDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final String CHOSEN = System.getProperty("patinary.test.database", "h2");
    private static final String IMAGE = "postgres:17";

    /** The preset code of first start in tests. */
    public static final String SETUP_CODE = "TEST-2345";

    private static List<String> address = List.of();

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        TestPropertyValues.of(address())
                .and("patinary.setup-code=" + SETUP_CODE)
                // Every class fits its table; at a usual start that is no longer looked at.
                .and("spring.jpa.hibernate.ddl-auto=validate")
                // Every change that a test makes is held against all documents replayed, on one database.
                .and("patinary.books.proved=" + CHOSEN.equals("h2"))
                // The histories of tests are short.
                .and("patinary.books.carried-every=3")
                .and("patinary.books.carried-uses=1")
                // A backup in the midst of a test would hold what the test empties.
                .and("patinary.backups.by-itself=false")
                // Each test begins by emptying the tables; nobody else may read them then.
                .and("patinary.reads-ahead=false")
                // Whoever is told to come again is told at once.
                .and("patinary.downloads.patience=50ms")
                .applyTo(context);
    }

    /** An empty database of the chosen kind for a program in a process of its own, as its system properties. */
    public static List<String> scratch(Path folder) {
        if (CHOSEN.equals("h2")) {
            return List.of("patinary.data=" + folder);
        }
        String name = "scratch" + UUID.randomUUID().toString().replace("-", "");
        List<String> shared = address();
        String url = value(shared, 0);
        try (Connection server = DriverManager.getConnection(url, value(shared, 1), value(shared, 2));
                Statement statement = server.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
        List<String> own = new ArrayList<>(shared);
        own.removeIf(property -> property.startsWith("patinary.data="));
        own.add("patinary.data=" + folder);
        own.set(0, "spring.datasource.url=" + url.replaceFirst("(//[^/]+/)[^?]+", "$1" + name));
        return own;
    }

    private static String value(List<String> properties, int index) {
        return properties.get(index).split("=", 2)[1];
    }

    private static synchronized List<String> address() {
        if (address.isEmpty()) {
            address = switch (CHOSEN) {
                case "h2" -> dataFolder();
                case "postgresql" -> containersAllowed() ? container() : unpacked();
                default ->
                    throw new IllegalArgumentException("patinary.test.database must be h2 or postgresql: " + CHOSEN);
            };
        }
        return address;
    }

    /** A data folder of its own; the embedded database is in it, and the photos are with either. */
    private static List<String> dataFolder() {
        try {
            Path folder = Files.createTempDirectory("patinary-test");
            return List.of("patinary.data=" + folder);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static boolean containersAllowed() {
        boolean allowed = Boolean.getBoolean("patinary.test.containers")
                || "true".equals(System.getenv("PATINARY_TEST_CONTAINERS"));
        return allowed && DockerClientFactory.instance().isDockerAvailable();
    }

    private static List<String> container() {
        // Closed with the run by the container library itself.
        PostgreSQLContainer server = new PostgreSQLContainer(IMAGE);
        server.start();
        return properties(server.getJdbcUrl(), server.getUsername(), server.getPassword());
    }

    private static List<String> unpacked() {
        try {
            // Closed with the run by its own shutdown hook.
            EmbeddedPostgres server = EmbeddedPostgres.builder().start();
            return properties(server.getJdbcUrl("postgres", "postgres"), "postgres", "");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static List<String> properties(String url, String user, String password) {
        List<String> properties = new ArrayList<>(dataFolder());
        properties.addAll(
                0,
                List.of(
                        "spring.datasource.url=" + url,
                        "spring.datasource.username=" + user,
                        "spring.datasource.password=" + password));
        return properties;
    }
}
