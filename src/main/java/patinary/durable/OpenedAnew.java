package patinary.durable;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcUtils;

/**
 * Closes the embedded database after its tables changed, so that the next question opens it anew. H2 (2.4.240) asks the session that made or
 * changed a table whether a word is among those that a check of it allows. When the pool retires that connection, after half an hour, every
 * row is refused; a database that was opened as it is asks a session of its own, which stays.
 */
public final class OpenedAnew {

    private static final String IN_A_FILE = "jdbc:h2:file:";

    private OpenedAnew() {}

    /** Does nothing where the database is a server's or in no file. Nobody may be at work in it. */
    public static void afterTablesChanged(DataSource store) throws SQLException {
        Connection connection = store.getConnection();
        try (Statement statement = connection.createStatement()) {
            if (!connection.getMetaData().getURL().startsWith(IN_A_FILE)) {
                return;
            }
            statement.execute("SHUTDOWN");
        } finally {
            // Closing the database takes its connections with it: to close this one may then fail, and says nothing.
            JdbcUtils.closeConnection(connection);
        }
        StoreCare.letGo(store);
    }
}
