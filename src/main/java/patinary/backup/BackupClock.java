package patinary.backup;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Looks every few minutes whether a backup is due. {@code patinary.backups.by-itself=false} makes this copy of the program never do it. */
@Component
@EnableScheduling
@ConditionalOnWebApplication
@ConditionalOnProperty(name = "patinary.backups.by-itself", matchIfMissing = true)
class BackupClock {

    private final Backups backups;

    BackupClock(Backups backups) {
        this.backups = backups;
    }

    @Scheduled(initialDelayString = "${patinary.backups.look:PT5M}", fixedDelayString = "${patinary.backups.look:PT5M}")
    void look() {
        backups.makeIfDue();
    }
}
