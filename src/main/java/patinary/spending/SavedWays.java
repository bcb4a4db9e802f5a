package patinary.spending;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps the ways that are driven often. A trip over one keeps its own miles, whatever becomes of the way later. */
@Service
@Transactional
class SavedWays {

    private static final String WAYS =
            "select id, start_place, destination, purpose, miles_one_way, version from saved_way";

    private final JdbcClient jdbc;

    SavedWays(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    List<SavedWay> all() {
        return jdbc.sql(WAYS + " order by lower(destination), lower(start_place), id")
                .query(SavedWay.class)
                .list();
    }

    @Transactional(readOnly = true)
    Optional<SavedWay> find(UUID id) {
        return jdbc.sql(WAYS + " where id = ?").param(id).query(SavedWay.class).optional();
    }

    void add(SavedWay way) {
        if (find(way.id()).isEmpty()) {
            jdbc.sql("insert into saved_way (id, start_place, destination, purpose, miles_one_way, version)"
                            + " values (?, ?, ?, ?, ?, 0)")
                    .params(way.id(), way.startPlace(), way.destination(), way.purpose(), way.milesOneWay())
                    .update();
        }
    }

    void change(SavedWay way) {
        int changed = jdbc.sql("update saved_way set start_place = ?, destination = ?, purpose = ?, miles_one_way = ?,"
                        + " version = version + 1 where id = ? and version = ?")
                .params(way.startPlace(), way.destination(), way.purpose(), way.milesOneWay(), way.id(), way.version())
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("The way changed in between: " + way.id());
        }
    }

    void remove(UUID id) {
        jdbc.sql("delete from saved_way where id = ?").param(id).update();
    }
}
