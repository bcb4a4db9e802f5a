package patinary.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import patinary.exchange.ArchiveProof;
import patinary.jobs.Leases;

/** Restores a backup where nobody is disturbed, and holds what comes of it against the shop. */
@Service
class Rehearsals {

    static final String JOB = "rehearsal";

    private static final Logger LOG = LoggerFactory.getLogger(Rehearsals.class);
    private static final Duration AT_MOST = Duration.ofHours(4);

    private final ProofProcess process;
    private final ArchiveProof shop;
    private final BackupPlans plans;
    private final BackupRuns runs;
    private final Leases leases;
    private final Clock clock;
    private final Words words;

    Rehearsals(
            ProofProcess process,
            ArchiveProof shop,
            BackupPlans plans,
            BackupRuns runs,
            Leases leases,
            Clock clock,
            Words words) {
        this.process = process;
        this.shop = shop;
        this.plans = plans;
        this.runs = runs;
        this.leases = leases;
        this.clock = clock;
        this.words = words;
    }

    /** The latest backup in the plan's folder. */
    Optional<Path> latest() {
        Path folder = plans.folder(plans.read());
        return new BackupFolder(folder).files().stream().findFirst().map(kept -> folder.resolve(kept.name()));
    }

    /** A backup in the plan's folder by its name. */
    Optional<Path> named(String name) {
        Path file = plans.folder(plans.read()).resolve(BackupFolder.isName(name) ? name : "");
        return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    }

    /** Rehearses with this file and keeps how it went; nothing where another is being rehearsed. */
    Optional<BackupRun> run(Path file) {
        AtomicReference<BackupRun> run = new AtomicReference<>();
        leases.once(JOB, Duration.ZERO, AT_MOST, () -> run.set(rehearse(file)));
        return Optional.ofNullable(run.get());
    }

    boolean isRunning() {
        return leases.isTaken(JOB);
    }

    private BackupRun rehearse(Path file) {
        Instant begun = clock.instant();
        BackupRun run;
        try {
            long bytes = Files.size(file);
            ProofReport report = process.prove(file);
            String told = report.rows().isEmpty() ? report.told() : report.told() + "\n" + sinceThen(report.rows());
            run = run(begun, report.good(), file, bytes, told);
        } catch (IOException failed) {
            LOG.warn("{} could not be rehearsed", file, failed);
            run = run(begun, false, file, null, words.of("proof.failed", String.valueOf(failed.getMessage())));
        }
        runs.store(run);
        return run;
    }

    private BackupRun run(
            Instant begun, boolean good, Path file, @org.jspecify.annotations.Nullable Long bytes, String told) {
        return new BackupRun(
                UUID.randomUUID(),
                BackupRun.What.REHEARSAL,
                begun,
                clock.instant(),
                good,
                file.toString(),
                bytes,
                null,
                told);
    }

    /** What the shop has more or fewer of by now. */
    private String sinceThen(Map<String, Long> then) {
        Map<String, Long> now = shop.rows();
        String changed = now.entrySet().stream()
                .filter(table -> !table.getValue().equals(then.getOrDefault(table.getKey(), 0L)))
                .map(table -> table.getKey().replace(".csv", "") + " "
                        + signed(table.getValue() - then.getOrDefault(table.getKey(), 0L)))
                .collect(Collectors.joining(", "));
        return changed.isEmpty() ? words.of("proof.as-now") : words.of("proof.since", changed);
    }

    private static String signed(long difference) {
        return difference > 0 ? "+" + difference : String.valueOf(difference);
    }
}
