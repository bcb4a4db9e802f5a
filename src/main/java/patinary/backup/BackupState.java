package patinary.backup;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;

/** How old the last backup is; the front page asks whether to warn. */
@Component("backupState")
public class BackupState {

    private final BackupPlans plans;
    private final BackupRuns runs;
    private final CurrentShop shop;
    private final Clock clock;

    BackupState(BackupPlans plans, BackupRuns runs, CurrentShop shop, Clock clock) {
        this.plans = plans;
        this.runs = runs;
        this.shop = shop;
        this.clock = clock;
    }

    /** Whether the owner is here and there is no good backup of late. */
    public boolean isWarning() {
        if (!isOwner()) {
            return false;
        }
        Instant wanted = clock.instant().minus(Duration.ofDays(plans.read().warnAfterDays()));
        return runs.lastGood().map(BackupRun::startedAt).orElse(Instant.MIN).isBefore(wanted);
    }

    /** How many days ago the last good one was made, or -1 where there is none. */
    public long days() {
        return runs.lastGood().map(run -> days(run.startedAt())).orElse(-1L);
    }

    /** How many days ago, by the shop's calendar. */
    public long days(Instant moment) {
        return Math.max(0, ChronoUnit.DAYS.between(LocalDate.ofInstant(moment, shop.zone()), shop.today()));
    }

    /** What went wrong last, where nothing has gone well since. */
    Optional<BackupRun> trouble() {
        return runs.last().filter(run -> !run.good());
    }

    private static boolean isOwner() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who != null && who.getAuthorities().stream().anyMatch(one -> "ROLE_OWNER".equals(one.getAuthority()));
    }
}
