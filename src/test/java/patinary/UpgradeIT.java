package patinary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipInputStream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.io.InputStreamResource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import patinary.ledger.Check;
import patinary.testing.TestDatabase;

/** Shops of earlier versions become shops of this one, and a shop of a later version is left alone. */
class UpgradeIT {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"20", "30", "40"})
    void keepsEveryRowOfAnEarlierVersion(String version) throws IOException {
        Place place = place();
        fill(place, version);
        long postings = count(place.store(), "posting");

        upgrade(place);

        assertThat(count(place.store(), "posting")).isEqualTo(postings).isPositive();
        assertThat(count(place.store(), "sale")).isPositive();
        assertThat(version(place.store())).isGreaterThan(40);
        assertThat(copies(place)).hasSize(place.isEmbedded() ? 1 : 0);
    }

    /** From the oldest, through all that came after it, into the program itself. */
    @Test
    void theProgramOpensTheOldestShopAndItsBooksAreRight() throws IOException {
        Place place = place();
        fill(place, "9");

        try (ConfigurableApplicationContext program = Errand.start(place.settings())) {
            assertThat(program.getBean(Check.class).run()).isEmpty();
            assertThat(program.getBean(JdbcClient.class)
                            .sql("select count(*) from sale")
                            .query(Long.class)
                            .single())
                    .isPositive();
        }

        if (place.isEmbedded()) {
            Path before = folder.resolve("before");
            unpack(copies(place).get(0), before);
            assertThat(version(embedded(before))).as("the copy leads back").isEqualTo(9);
        }
    }

    @Test
    void aShopOfANewerProgramIsRefusedAndNothingIsChanged() {
        Place place = place();
        upgrade(place);
        JdbcClient.create(place.store()).sql("""
                        insert into "flyway_schema_history" ("installed_rank", "version", "description", "type", "script",
                            "installed_by", "execution_time", "success")
                        values (9999, '999', 'of tomorrow', 'SQL', 'V999__of_tomorrow.sql', 'x', 0, true)
                        """).update();

        assertThatThrownBy(() -> upgrade(place))
                .isInstanceOfSatisfying(
                        NewerData.class,
                        newer -> assertThat(newer.getExitCode()).isEqualTo(3))
                .hasMessageContaining("version 999")
                .hasMessageContaining("newer program");
        assertThat(copies(place)).isEmpty();
    }

    /** As half an hour later, when the pool has retired what it opened first. */
    @Test
    void rowsAreTakenWhenTheConnectionThatMadeTheTablesIsGone() throws SQLException {
        String url = "jdbc:h2:file:" + folder.resolve("later").resolve("shop") + ";WRITE_DELAY=0";
        try (Connection late = upgradedByAPoolThatIsGone(url)) {
            JdbcClient jdbc = JdbcClient.create(new SingleConnectionDataSource(late, true));

            assertThat(jdbc.sql("insert into person (id, name, password_hash, role, created_at, version)"
                                    + " values (random_uuid(), 'Robin', 'x', 'OWNER', current_timestamp, 0)")
                            .update())
                    .isEqualTo(1);
        }
    }

    private Connection upgradedByAPoolThatIsGone(String url) throws SQLException {
        try (HikariDataSource pool = new HikariDataSource()) {
            pool.setJdbcUrl(url);
            pool.setUsername("sa");
            upgrade(new Place(pool, folder.resolve("later"), List.of()));
            return DriverManager.getConnection(url, "sa", "");
        }
    }

    /** A database of a test, and the settings by which the program finds it. */
    private record Place(DataSource store, Path data, List<String> settings) {

        boolean isEmbedded() {
            return settings.size() == 1;
        }
    }

    private Place place() {
        Path data = folder.resolve("data");
        List<String> settings = new ArrayList<>();
        Map<String, String> named = new java.util.HashMap<>();
        for (String property : TestDatabase.scratch(data)) {
            settings.add("--" + property);
            named.put(property.split("=", 2)[0], property.split("=", 2)[1]);
        }
        String url = named.get("spring.datasource.url");
        DataSource store = url == null
                ? embedded(data)
                : new DriverManagerDataSource(url, named.get("spring.datasource.username"), "");
        return new Place(store, data, settings);
    }

    private static DataSource embedded(Path data) {
        return new DriverManagerDataSource("jdbc:h2:file:" + data.resolve("shop") + ";WRITE_DELAY=0", "sa", "");
    }

    private static void fill(Place place, String version) throws IOException {
        flyway(place).target(version).locations("classpath:db/migration").load().migrate();
        try (InputStream rows =
                new GZIPInputStream(UpgradeIT.class.getResourceAsStream("/upgrades/V" + version + ".sql.gz"))) {
            ResourceDatabasePopulator populator = new ResourceDatabasePopulator(new InputStreamResource(rows));
            populator.setSqlScriptEncoding("UTF-8");
            populator.execute(place.store());
        }
    }

    private static void upgrade(Place place) {
        new Upgrade(place.data(), Clock.systemUTC()).migrate(flyway(place).load());
    }

    private static FluentConfiguration flyway(Place place) {
        FluentConfiguration flyway =
                Flyway.configure().dataSource(place.store()).locations("classpath:db/migration", "classpath:db/views");
        new ViewsTogether().customize(flyway);
        return flyway;
    }

    private static long count(DataSource store, String table) {
        return JdbcClient.create(store)
                .sql("select count(*) from " + table)
                .query(Long.class)
                .single();
    }

    private static int version(DataSource store) {
        return JdbcClient.create(store)
                .sql("select max(cast(\"version\" as integer)) from \"flyway_schema_history\"")
                .query(Integer.class)
                .single();
    }

    private static List<Path> copies(Place place) {
        Path backups = place.data().resolve("backups");
        if (!Files.isDirectory(backups)) {
            return List.of();
        }
        try (var files = Files.list(backups)) {
            return files.toList();
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private static void unpack(Path zip, Path to) throws IOException {
        Files.createDirectories(to);
        try (ZipInputStream stream = new ZipInputStream(Files.newInputStream(zip))) {
            for (var entry = stream.getNextEntry(); entry != null; entry = stream.getNextEntry()) {
                Files.copy(stream, to.resolve(entry.getName()));
            }
        }
    }
}
