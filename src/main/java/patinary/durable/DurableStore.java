package patinary.durable;

import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Refuses to start on an embedded store that answers before it writes: with H2's usual delay of half a second a killed
 * program forgets what it has already confirmed. Runs before the first request is taken.
 */
@Component
@Lazy(false)
class DurableStore implements InitializingBean {

    private final DataSource store;
    private final JdbcClient jdbc;

    DurableStore(DataSource store, JdbcClient jdbc) {
        this.store = store;
        this.jdbc = jdbc;
    }

    @Override
    public void afterPropertiesSet() throws SQLException {
        if (Engine.of(store) != Engine.H2) {
            return;
        }
        // H2 lists the address's own word and the database's; both must say none.
        List<String> delays = jdbc.sql(
                        "select setting_value from information_schema.settings where setting_name = 'WRITE_DELAY'")
                .query(String.class)
                .list();
        if (delays.isEmpty() || delays.stream().anyMatch(delay -> !delay.equals("0"))) {
            throw new IllegalStateException("The store's WRITE_DELAY is " + delays
                    + " and must be 0, or confirmed records can be lost. Add ;WRITE_DELAY=0 to its address.");
        }
    }
}
