package patinary.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Service;
import patinary.backup.BackupRun.What;
import patinary.exchange.ArchiveRefused;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.jobs.Leases;
import patinary.shop.CurrentShop;

/** Makes backups while the shop is open, one at a time among all copies of the program, and keeps how each went. */
@Service
class Backups {

    static final String JOB = "backup";

    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);
    private static final Duration AT_MOST = Duration.ofHours(6);
    private static final Duration REMEMBERED = Duration.ofDays(400);

    private final ShopArchive archive;
    private final BackupPlans plans;
    private final BackupRuns runs;
    private final Leases leases;
    private final CurrentShop shop;
    private final Clock clock;
    private final Words words;

    Backups(
            ShopArchive archive,
            BackupPlans plans,
            BackupRuns runs,
            Leases leases,
            CurrentShop shop,
            Clock clock,
            Words words) {
        this.archive = archive;
        this.plans = plans;
        this.runs = runs;
        this.leases = leases;
        this.shop = shop;
        this.clock = clock;
        this.words = words;
    }

    /** Makes one where the plan says that it is time to. */
    void makeIfDue() {
        if (isDue()) {
            // Another copy may have made it since that was asked; from here on nobody else does.
            alone(() -> isDue() ? planned(Progress.SILENT) : null);
        }
    }

    /** Makes one in the plan's folder and takes the oldest away; nothing where another is being made. */
    Optional<BackupRun> make(Progress progress) {
        return alone(() -> planned(progress));
    }

    private BackupRun planned(Progress progress) {
        BackupPlan plan = plans.read();
        BackupFolder folder = new BackupFolder(plans.folder(plan));
        String name = BackupFolder.name(LocalDateTime.ofInstant(clock.instant(), shop.zone()));
        BackupRun run = write(plans.folder(plan).resolve(name), progress);
        if (run.good()) {
            tidy(folder, plan);
        }
        return run;
    }

    /** Makes one under a name of its own, wherever that is. */
    Optional<BackupRun> makeAt(Path file, Progress progress) {
        return alone(() -> write(file, progress));
    }

    /** Sends one to the device that asked for it. */
    void take(OutputStream stream) throws IOException {
        Instant begun = clock.instant();
        long changes = runs.changes();
        CountedStream counted = new CountedStream(stream);
        archive.backup(counted, Progress.SILENT);
        String told = words.of("taken", Words.size(counted.written()));
        runs.store(new BackupRun(
                UUID.randomUUID(), What.TAKEN, begun, clock.instant(), true, "", counted.written(), changes, told));
    }

    boolean isRunning() {
        return leases.isTaken(JOB);
    }

    private boolean isDue() {
        if (!shop.isOpen()) {
            return false;
        }
        BackupPlan plan = plans.read();
        if (!plan.byItself()) {
            return false;
        }
        DailyBackup daily = new DailyBackup(plan.atHour(), shop.zone());
        Optional<BackupRun> last = runs.last();
        return daily.isDue(
                clock.instant(),
                last.map(BackupRun::startedAt).orElse(null),
                last.map(BackupRun::good).orElse(false));
    }

    private Optional<BackupRun> alone(Supplier<@Nullable BackupRun> work) {
        AtomicReference<@Nullable BackupRun> run = new AtomicReference<>();
        leases.once(JOB, Duration.ZERO, AT_MOST, () -> run.set(work.get()));
        return Optional.ofNullable(run.get());
    }

    private BackupRun write(Path file, Progress progress) {
        Instant begun = clock.instant();
        BackupRun run;
        try {
            Path target = file.toAbsolutePath();
            long changes = runs.changes();
            new BackupFolder(target.getParent())
                    .write(
                            target.getFileName().toString(),
                            stream -> archive.backup(stream, progress),
                            ShopArchive::readBack);
            long bytes = Files.size(target);
            String told = words.of("made", Words.size(bytes));
            run = new BackupRun(
                    UUID.randomUUID(),
                    What.BACKUP,
                    begun,
                    clock.instant(),
                    true,
                    file.toString(),
                    bytes,
                    changes,
                    told);
        } catch (IOException | ArchiveRefused | DataAccessException failed) {
            LOG.warn("No backup could be made at {}", file, failed);
            run = new BackupRun(
                    UUID.randomUUID(),
                    What.BACKUP,
                    begun,
                    clock.instant(),
                    false,
                    file.toString(),
                    null,
                    null,
                    reason(failed, file));
        }
        runs.store(run);
        return run;
    }

    private void tidy(BackupFolder folder, BackupPlan plan) {
        runs.forget(clock.instant().minus(REMEMBERED));
        try {
            folder.keepOnly(plan.keep(), clock.instant());
        } catch (IOException failed) {
            LOG.warn("Old backups could not be taken away", failed);
        }
    }

    private String reason(Exception failed, Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (failed instanceof ArchiveRefused) {
            return words.of("failed.read-back");
        }
        if (failed instanceof AccessDeniedException || Files.isDirectory(folder) && !Files.isWritable(folder)) {
            return words.of("failed.denied", folder);
        }
        if (!Files.isDirectory(folder)) {
            return words.of("failed.folder", folder);
        }
        return words.of("failed.other", String.valueOf(failed.getMessage()));
    }
}
