package patinary.supplies;

import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The supplies that were mixed at the bench and put aside: they are used like any other, but nobody sells them. */
@Repository
@Transactional(readOnly = true)
public class PotsPutAside {

    private final JdbcClient jdbc;

    PotsPutAside(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All of them, used up or not. */
    public Set<UUID> ids() {
        return new HashSet<>(jdbc.sql("select kept_as from bench_pot where kept_as is not null")
                .query(UUID.class)
                .list());
    }
}
