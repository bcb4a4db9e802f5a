package patinary.durable;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;

/** The two databases that the shop runs on, for the few places where they must be asked in different words. */
public enum Engine {
    H2,
    POSTGRESQL;

    private static final String EMBEDDED = "H2";

    /** The one behind an address. */
    public static Engine of(DataSource store) throws SQLException {
        try (Connection connection = store.getConnection()) {
            return connection.getMetaData().getDatabaseProductName().equals(EMBEDDED) ? H2 : POSTGRESQL;
        }
    }
}
