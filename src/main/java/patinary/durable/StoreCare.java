package patinary.durable;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Lets go of a store that broke, so that it is opened anew as soon as it can be. H2 closes a store that it could not write, and opens
 * it again only when nobody holds it any more; a server that is back is not reached by connections from before.
 */
@Component
public class StoreCare {

    private static final Logger LOG = LoggerFactory.getLogger(StoreCare.class);

    private final DataSource store;
    private final EmbeddedDisk disk;

    StoreCare(DataSource store, EmbeddedDisk disk) {
        this.store = store;
        this.disk = disk;
    }

    /** What a failure means; where the store broke, its connections are let go. */
    public StoreFailure look(Throwable failure) {
        StoreFailure kind = StoreFailure.of(failure);
        if (kind == StoreFailure.FULL || kind == StoreFailure.GONE || kind == StoreFailure.UNSURE) {
            letGo();
        }
        return kind;
    }

    private void letGo() {
        disk.letGo();
        try {
            letGo(store);
        } catch (SQLException impossible) {
            LOG.warn("The pool could not be let go", impossible);
        }
    }

    /** Has the pool close what it holds, each connection as soon as nobody works with it. */
    static void letGo(DataSource store) throws SQLException {
        HikariPoolMXBean pool = store.isWrapperFor(HikariDataSource.class)
                ? store.unwrap(HikariDataSource.class).getHikariPoolMXBean()
                : null;
        if (pool != null) {
            pool.softEvictConnections();
        }
    }
}
