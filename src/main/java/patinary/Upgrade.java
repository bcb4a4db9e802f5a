package patinary;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Arrays;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;
import org.flywaydb.core.api.MigrationVersion;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.stereotype.Component;
import patinary.durable.OpenedAnew;

/**
 * Brings the shop's data to what this program knows. Data of a newer program is refused: by itself the migrating library would
 * overlook what it does not know. Before older data is changed, the embedded database is copied whole.
 */
@Component
class Upgrade implements FlywayMigrationStrategy {

    private static final Logger LOG = LoggerFactory.getLogger(Upgrade.class);

    private final CopyBefore copy;

    Upgrade(@Value("${patinary.data:./data}") Path data, Clock clock) {
        this.copy = new CopyBefore(data.resolve("backups"), clock);
    }

    @Override
    public void migrate(Flyway flyway) {
        MigrationInfoService info = flyway.info();
        refuseNewer(info.all());
        MigrationInfo current = info.current();
        String next = next(info.pending());
        if (current != null && !next.isEmpty()) {
            String from = String.valueOf(version(info.applied()));
            if (copy.make(flyway.getConfiguration().getDataSource(), from)) {
                LOG.info("The shop's data is brought from version {} to {}; a copy of before is kept", from, next);
            } else {
                LOG.warn(
                        "The shop's data is brought from version {} to {}. This database is not copied by the program: "
                                + "only a dump that was made before leads back",
                        from,
                        next);
            }
        }
        if (flyway.migrate().migrationsExecuted > 0) {
            openAnew(flyway.getConfiguration().getDataSource());
        }
    }

    private static void openAnew(DataSource store) {
        try {
            OpenedAnew.afterTablesChanged(store);
        } catch (SQLException failed) {
            throw new IllegalStateException("The data was brought up to date and could not be opened anew", failed);
        }
    }

    private static void refuseNewer(MigrationInfo... all) {
        String known = String.valueOf(version(
                Arrays.stream(all).filter(one -> !isNewer(one.getState())).toArray(MigrationInfo[]::new)));
        Arrays.stream(all)
                .filter(one -> isNewer(one.getState()) && one.getVersion() != null)
                .map(MigrationInfo::getVersion)
                .max(MigrationVersion::compareTo)
                .ifPresent(newer -> {
                    throw new NewerData(newer.toString(), known);
                });
    }

    private static boolean isNewer(MigrationState state) {
        return state == MigrationState.FUTURE_SUCCESS || state == MigrationState.FUTURE_FAILED;
    }

    /** The highest version; views have none. */
    private static MigrationVersion version(MigrationInfo... all) {
        return Arrays.stream(all)
                .map(MigrationInfo::getVersion)
                .filter(version -> version != null)
                .max(MigrationVersion::compareTo)
                .orElse(MigrationVersion.EMPTY);
    }

    private static String next(MigrationInfo... pending) {
        MigrationVersion version = version(pending);
        return version.equals(MigrationVersion.EMPTY) ? "" : version.toString();
    }
}
