package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.web.Choice;

/** The vehicles, what their odometers read, and the miles of each year. */
@Service
@Transactional
public class Vehicles {

    /** What was read from one odometer for one year. */
    record Reading(
            UUID vehicleId,
            int taxYear,
            @Nullable BigDecimal startReading,
            @Nullable BigDecimal endReading,
            @Nullable BigDecimal commutingMiles,
            long version) {}

    private static final String VEHICLES = "select id, name, in_service, note, version from vehicle";

    private static final String TABLE = "vehicle";

    private final JdbcClient jdbc;
    private final Trail trail;

    Vehicles(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** The miles of every vehicle in a year, by name. */
    @Transactional(readOnly = true)
    public List<VehicleYear> year(int year) {
        return jdbc.sql("""
                        select v.id as vehicle_id, v.name as vehicle, v.in_service, cast(:year as integer) as tax_year,
                               y.start_reading, y.end_reading,
                               coalesce((select sum(l.miles) from trip_log l
                                         where l.vehicle_id = v.id and l.doc_date between :first and :last), 0) as business,
                               y.commuting_miles as commuting
                        from vehicle v
                        left join vehicle_year y on y.vehicle_id = v.id and y.tax_year = :year
                        order by lower(v.name), v.id""")
                .param("year", year)
                .param("first", LocalDate.of(year, 1, 1))
                .param("last", LocalDate.of(year, 12, 31))
                .query((row, number) -> new VehicleYear(
                        row.getObject("vehicle_id", UUID.class),
                        row.getString("vehicle"),
                        row.getObject("in_service", LocalDate.class),
                        row.getInt("tax_year"),
                        row.getBigDecimal("start_reading"),
                        row.getBigDecimal("end_reading"),
                        row.getBigDecimal("business"),
                        row.getBigDecimal("commuting")))
                .list();
    }

    @Transactional(readOnly = true)
    List<Vehicle> all() {
        return jdbc.sql(VEHICLES + " order by lower(name), id")
                .query(Vehicle.class)
                .list();
    }

    @Transactional(readOnly = true)
    List<Choice> choices() {
        return all().stream()
                .map(vehicle -> Choice.named(vehicle.id().toString(), vehicle.name()))
                .toList();
    }

    @Transactional(readOnly = true)
    Optional<Vehicle> find(UUID id) {
        return jdbc.sql(VEHICLES + " where id = ?")
                .param(id)
                .query(Vehicle.class)
                .optional();
    }

    @Transactional(readOnly = true)
    boolean isTaken(UUID id, String name) {
        return all().stream()
                .anyMatch(other -> !other.id().equals(id) && other.name().equalsIgnoreCase(name));
    }

    void add(Vehicle vehicle) {
        if (find(vehicle.id()).isEmpty()) {
            trail.thing(TABLE, vehicle.id());
            jdbc.sql("insert into vehicle (id, name, in_service, note, version) values (?, ?, ?, ?, 0)")
                    .params(vehicle.id(), vehicle.name(), vehicle.inService(), vehicle.note())
                    .update();
        }
    }

    void change(Vehicle vehicle) {
        trail.thing(TABLE, vehicle.id());
        int changed = jdbc.sql("update vehicle set name = ?, in_service = ?, note = ?, version = version + 1"
                        + " where id = ? and version = ?")
                .params(vehicle.name(), vehicle.inService(), vehicle.note(), vehicle.id(), vehicle.version())
                .update();
        requireFresh(changed, vehicle.id());
    }

    /** Whether it could be removed: a vehicle that trips name stays. What its odometer read goes with it. */
    boolean remove(UUID id) {
        boolean driven = jdbc.sql("select count(*) from trip where vehicle_id = ?")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
        if (!driven) {
            trail.thing(TABLE, id);
            jdbc.sql("delete from vehicle_year where vehicle_id = ?").param(id).update();
            jdbc.sql("delete from vehicle where id = ?").param(id).update();
        }
        return !driven;
    }

    @Transactional(readOnly = true)
    Optional<Reading> reading(UUID vehicle, int year) {
        return jdbc.sql("select vehicle_id, tax_year, start_reading, end_reading, commuting_miles, version"
                        + " from vehicle_year where vehicle_id = ? and tax_year = ?")
                .params(vehicle, year)
                .query(Reading.class)
                .optional();
    }

    /** Keeps what was read; {@code version} is -1 where the form was drawn before there was anything. */
    void keep(Reading read) {
        trail.thing(TABLE, read.vehicleId());
        if (read.version() < 0) {
            if (reading(read.vehicleId(), read.taxYear()).isPresent()) {
                throw new OptimisticLockingFailureException(
                        "The readings of " + read.vehicleId() + " are there already");
            }
            jdbc.sql("insert into vehicle_year (vehicle_id, tax_year, start_reading, end_reading, commuting_miles,"
                            + " version) values (?, ?, ?, ?, ?, 0)")
                    .params(
                            read.vehicleId(),
                            read.taxYear(),
                            read.startReading(),
                            read.endReading(),
                            read.commutingMiles())
                    .update();
            return;
        }
        int changed = jdbc.sql("update vehicle_year set start_reading = ?, end_reading = ?, commuting_miles = ?,"
                        + " version = version + 1 where vehicle_id = ? and tax_year = ? and version = ?")
                .params(
                        read.startReading(),
                        read.endReading(),
                        read.commutingMiles(),
                        read.vehicleId(),
                        read.taxYear(),
                        read.version())
                .update();
        requireFresh(changed, read.vehicleId());
    }

    private static void requireFresh(int changed, UUID id) {
        if (changed == 0) {
            throw new OptimisticLockingFailureException("The vehicle changed in between: " + id);
        }
    }
}
