package patinary.counting;

import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** What the pieces waiting on the bench will take of each supply, from their planned finishes. */
@Repository
@Transactional(readOnly = true)
class WaitingNeeds {

    private final JdbcClient jdbc;

    WaitingNeeds(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<UUID, BuyRow.Need> all() {
        return jdbc.sql("""
                        select supply_id, sum(quantity) as quantity, count(distinct piece_id) as pieces
                        from piece_need group by supply_id""").query(BuyRow.Need.class).stream()
                .collect(Collectors.toMap(BuyRow.Need::supplyId, Function.identity()));
    }
}
