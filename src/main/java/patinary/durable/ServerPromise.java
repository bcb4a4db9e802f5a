package patinary.durable;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Looks, when the program starts, whether a PostgreSQL server forces what it confirms. Some who try the program out switch
 * that off, so it is said aloud in the log and on the settings page, and not refused.
 *
 * <p>Source: PostgreSQL 17 documentation, 19.5 Write Ahead Log: with {@code fsync} off a crash of the machine can damage the
 * whole database, with {@code synchronous_commit} off the last confirmed changes can be lost, with {@code full_page_writes}
 * off a page may be half written.
 */
@Component
@Lazy(false)
class ServerPromise implements InitializingBean {

    private static final Logger LOG = LoggerFactory.getLogger(ServerPromise.class);

    private final EmbeddedDisk disk;
    private final JdbcClient jdbc;
    private List<String> off = List.of();

    ServerPromise(EmbeddedDisk disk, JdbcClient jdbc) {
        this.disk = disk;
        this.jdbc = jdbc;
    }

    @Override
    public void afterPropertiesSet() {
        if (!disk.isUnderTheStore()) {
            off = jdbc.sql("select name from pg_settings where setting = 'off'"
                            + " and name in ('fsync', 'synchronous_commit', 'full_page_writes') order by name")
                    .query(String.class)
                    .list();
            if (!off.isEmpty()) {
                LOG.warn("The database confirms changes that a power cut can take away again: off are {}", off);
            }
        }
    }

    /** The server's settings that must be on and are off. */
    List<String> off() {
        return off;
    }
}
