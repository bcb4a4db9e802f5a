package patinary.asking;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.selling.Offer;

/** The days on which offers were not to be had. */
@Repository
class OfferPauses {

    private record Row(
            UUID offerId, LocalDate pausedFrom, @Nullable LocalDate pausedTo) {}

    private final JdbcClient jdbc;

    OfferPauses(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<UUID, List<Offer.Pause>> all() {
        return jdbc.sql("select offer_id, paused_from, paused_to from offer_pause").query(Row.class).list().stream()
                .collect(Collectors.groupingBy(
                        Row::offerId,
                        Collectors.mapping(
                                row -> new Offer.Pause(row.pausedFrom(), row.pausedTo()), Collectors.toList())));
    }
}
