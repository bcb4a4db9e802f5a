package patinary.durable;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.stereotype.Component;

/**
 * The disk under the embedded store. H2 writes a change to its file when it commits, and leaves it to the operating system
 * when the disk gets it: {@code CHECKPOINT SYNC} forces the file there. It needs an administrator, which the shop's own user
 * is, and a connection of its own: whoever waits here holds one of the pool's.
 */
@Component
class EmbeddedDisk implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedDisk.class);

    private final JdbcConnectionDetails store;
    private final GroupForce group = new GroupForce(this::forceNow);
    private @Nullable Connection connection;
    private @Nullable NotForced distrust;

    EmbeddedDisk(JdbcConnectionDetails store) {
        this.store = store;
    }

    /** Whether the shop's store is embedded; a server forces its own log when it commits. */
    boolean isUnderTheStore() {
        return store.getJdbcUrl().startsWith("jdbc:h2:");
    }

    /**
     * Returns once everything that was committed before is on the disk.
     *
     * @throws NotForced where that is not known; also where the store broke after the commit, which may be in it or not. Once the disk itself has failed to force, the program takes nothing more
     *     until it is started anew: asked again, some systems say yes without having written (Linux keeps the pages that it
     *     could not write as if it had).
     */
    void force() {
        group.await();
    }

    long forcings() {
        return group.count();
    }

    private synchronized void forceNow() {
        if (distrust != null) {
            throw distrust;
        }
        try (Statement statement = connection().createStatement()) {
            statement.execute("CHECKPOINT SYNC");
        } catch (SQLException failed) {
            LOG.error("A change was committed and could not be forced to the disk", failed);
            letGo();
            NotForced unknown = new NotForced("The store could not be forced to the disk", failed);
            if (diskFailed(failed)) {
                distrust = unknown;
            }
            throw unknown;
        }
    }

    private Connection connection() throws SQLException {
        if (connection == null || connection.isClosed()) {
            connection = DriverManager.getConnection(store.getJdbcUrl(), store.getUsername(), store.getPassword());
        }
        return connection;
    }

    /** H2's words where the file was written and the forcing itself failed. */
    private static boolean diskFailed(SQLException failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (String.valueOf(cause.getMessage()).contains("Could not sync")) {
                return true;
            }
        }
        return false;
    }

    /** Without this connection the store closes with the pool's last one. */
    @Override
    public void destroy() {
        letGo();
    }

    /** H2 does not mend a store that failed to write. Once nobody holds it, it is opened anew from its file. */
    synchronized void letGo() {
        if (connection != null) {
            try {
                connection.close();
            } catch (SQLException alreadyGone) {
                LOG.debug("The connection for forcing was gone", alreadyGone);
            }
            connection = null;
        }
    }
}
