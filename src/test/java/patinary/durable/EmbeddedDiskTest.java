package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** On a real store of H2, whose disk is watched, and made to fail. */
class EmbeddedDiskTest {

    @TempDir
    private Path folder;

    private String url = "";
    private @Nullable Connection open;
    private EmbeddedDisk disk = new EmbeddedDisk(details(""));
    private TransactionTemplate change = new TransactionTemplate();

    @BeforeEach
    void open() throws SQLException {
        FailingDisk.register();
        url = "jdbc:h2:failing:" + folder.resolve("shop") + ";WRITE_DELAY=0";
        disk = new EmbeddedDisk(details(url));
        JdbcTransactionManager transactions = new JdbcTransactionManager(new DriverManagerDataSource(url, "sa", ""));
        transactions.addListener(new ForceAfterCommit(disk));
        change = new TransactionTemplate(transactions);
        open = connect();
        run("create table thing (id int)");
    }

    @AfterEach
    void close() throws SQLException {
        FailingDisk.REFUSES.set(false);
        FailingDisk.FULL.set(false);
        disk.destroy();
        letGo();
    }

    /** H2 closes the store on a disk that is full, and opens it again when nobody holds it any more. */
    @Test
    void aFullDiskIsAFailureAndGoesByItself() {
        change.executeWithoutResult(status -> insert());
        FailingDisk.FULL.set(true);
        assertThatThrownBy(() -> change.executeWithoutResult(status -> insert()))
                .isInstanceOf(RuntimeException.class);

        FailingDisk.FULL.set(false);
        disk.letGo();
        letGo();
        change.executeWithoutResult(status -> insert());
        assertThat(count()).as("the first and the last").isEqualTo(2);
    }

    /** So that the measure measures something: H2 by itself leaves a commit to the operating system. */
    @Test
    void theStoreAloneForcesNothing() throws SQLException {
        long before = FailingDisk.FORCED.get();

        run("insert into thing values (1)");

        assertThat(FailingDisk.FORCED.get()).isEqualTo(before);
    }

    @Test
    void aChangeIsForcedBeforeItsTransactionReturns() {
        long before = FailingDisk.FORCED.get();

        change.executeWithoutResult(status -> insert());

        assertThat(FailingDisk.FORCED.get()).isGreaterThan(before);
        assertThat(disk.forcings()).isEqualTo(1);
    }

    @Test
    void readingIsNotForced() {
        change.setReadOnly(true);
        change.executeWithoutResult(status -> {});
        change.setReadOnly(false);
        change.setName("signed-in state");
        change.executeWithoutResult(status -> {});

        assertThat(disk.forcings()).isZero();
    }

    @Test
    void whatCannotBeForcedIsAFailureAndStaysOneUntilTheProgramStartsAnew() {
        FailingDisk.REFUSES.set(true);
        assertThatThrownBy(() -> change.executeWithoutResult(status -> insert()))
                .isInstanceOf(NotForced.class);

        FailingDisk.REFUSES.set(false);
        assertThatThrownBy(() -> disk.force()).as("a disk that failed once").isInstanceOf(NotForced.class);
    }

    private void insert() {
        JdbcClient.create(source()).sql("insert into thing values (1)").update();
    }

    private int count() {
        return JdbcClient.create(source())
                .sql("select count(*) from thing")
                .query(Integer.class)
                .single();
    }

    private DataSource source() {
        return ((JdbcTransactionManager) Objects.requireNonNull(change.getTransactionManager())).getDataSource();
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = connect();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private Connection connect() throws SQLException {
        return DriverManager.getConnection(url, "sa", "");
    }

    private void letGo() {
        try {
            Objects.requireNonNull(open).close();
        } catch (SQLException broken) {
            assertThat(broken.getMessage()).as("let go all the same").contains("failed");
        }
    }

    private static JdbcConnectionDetails details(String url) {
        return new JdbcConnectionDetails() {
            @Override
            public String getJdbcUrl() {
                return url;
            }

            @Override
            public String getUsername() {
                return "sa";
            }

            @Override
            public String getPassword() {
                return "";
            }
        };
    }
}
