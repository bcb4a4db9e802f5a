package patinary.sending;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** Her carriers' services and their tables. */
@Repository
@Transactional
class Carriers {

    private record Head(UUID id, String name, UUID placeId, long version) {}

    private final JdbcClient jdbc;

    Carriers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By name. */
    @Transactional(readOnly = true)
    List<Carrier> all() {
        Map<UUID, List<Carrier.Row>> rows = jdbc
                .sql("select service_id, valid_from, up_to_g, up_to_size, cost_minor from carrier_rate order by line")
                .query(Carrier.Row.class)
                .list()
                .stream()
                .collect(Collectors.groupingBy(Carrier.Row::serviceId));
        return jdbc
                .sql("select id, name, place_id, version from carrier_service order by lower(name), id")
                .query(Head.class)
                .list()
                .stream()
                .map(head -> new Carrier(
                        head.id(),
                        head.name(),
                        head.placeId(),
                        head.version(),
                        rows.getOrDefault(head.id(), List.of())))
                .toList();
    }

    @Transactional(readOnly = true)
    Optional<Carrier> find(UUID id) {
        return all().stream().filter(carrier -> carrier.id().equals(id)).findFirst();
    }

    /**
     * Adds a service, or changes the one of that id.
     *
     * @throws OptimisticLockingFailureException where somebody changed it since its form was drawn
     */
    void save(Carrier carrier) {
        int changed = jdbc.sql("update carrier_service set name = ?, place_id = ?, version = version + 1"
                        + " where id = ? and version = ?")
                .params(carrier.name(), carrier.placeId(), carrier.id(), carrier.version())
                .update();
        if (changed == 0) {
            if (find(carrier.id()).isPresent()) {
                throw new OptimisticLockingFailureException("Carrier " + carrier.id() + " is stale");
            }
            jdbc.sql("insert into carrier_service (id, name, place_id) values (?, ?, ?)")
                    .params(carrier.id(), carrier.name(), carrier.placeId())
                    .update();
        }
        jdbc.sql("delete from carrier_rate where service_id = ?")
                .param(carrier.id())
                .update();
        int line = 0;
        for (Carrier.Row row : carrier.rows()) {
            jdbc.sql("insert into carrier_rate (service_id, line, valid_from, up_to_g, up_to_size, cost_minor)"
                            + " values (?, ?, ?, ?, ?, ?)")
                    .params(carrier.id(), ++line, row.validFrom(), row.upToG(), row.upToSize(), row.costMinor())
                    .update();
        }
    }

    /** What was sent with it stays sent; only the name of the service is gone from it. */
    void remove(UUID id) {
        int removed =
                jdbc.sql("delete from carrier_service where id = ?").param(id).update();
        if (removed == 0) {
            throw new NotFound("Carrier " + id);
        }
    }
}
