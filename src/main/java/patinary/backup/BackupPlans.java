package patinary.backup;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The one plan for backups. */
@Repository
class BackupPlans {

    private final JdbcClient jdbc;
    private final Path usualFolder;

    BackupPlans(JdbcClient jdbc, @Value("${patinary.data:./data}") Path data) {
        this.jdbc = jdbc;
        this.usualFolder = data.resolve("backups").toAbsolutePath().normalize();
    }

    BackupPlan read() {
        return jdbc.sql("select by_itself, folder, at_hour, keep, warn_after_days from backup_plan")
                .query(BackupPlan.class)
                .optional()
                .orElse(BackupPlan.USUAL);
    }

    @Transactional
    public void store(BackupPlan plan) {
        jdbc.sql("delete from backup_plan").update();
        jdbc.sql("insert into backup_plan (id, by_itself, folder, at_hour, keep, warn_after_days)"
                        + " values (1, ?, ?, ?, ?, ?)")
                .params(plan.byItself(), plan.folder(), plan.atHour(), plan.keep(), plan.warnAfterDays())
                .update();
    }

    /** The folder itself. */
    Path folder(BackupPlan plan) {
        return plan.folder().isEmpty() ? usualFolder : Path.of(plan.folder());
    }

    /** Whether backups lie beside the shop's own data, where one broken disk takes both. */
    boolean isBesideTheShop(BackupPlan plan) {
        return folder(plan).startsWith(usualFolder.getParent());
    }
}
