package patinary.jobs;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.PessimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * Lets one copy of the program at a time do a job. Who has the lease of a job has its row until a moment by the database's
 * clock, which is the one clock that all copies share; a copy that is killed meanwhile keeps the others waiting until then and no
 * longer. Not to be called within a transaction: others must see the lease before the work begins.
 */
@Service
public class Leases {

    /** What is done under a lease. */
    @FunctionalInterface
    public interface Work<E extends Exception> {

        void run() throws E;
    }

    private static final Logger LOG = LoggerFactory.getLogger(Leases.class);

    private final JdbcClient jdbc;
    private final String holder = UUID.randomUUID().toString();

    Leases(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Does the work unless another copy does it or has done it just now. Where it fails, it may be tried again at once.
     *
     * @param job the name of the job, at most 40 signs
     * @param every how long after its beginning nobody does it again
     * @param atMost longer than the work ever takes: when another may take it for dead
     * @return whether it was done here
     */
    public <E extends Exception> boolean once(String job, Duration every, Duration atMost, Work<E> work) throws E {
        OffsetDateTime begun = now();
        if (!take(job, begun, begun.plus(atMost))) {
            return false;
        }
        LOG.debug("{} is done by this copy", job);
        OffsetDateTime free = begun;
        try {
            work.run();
            free = begun.plus(every);
        } finally {
            jdbc.sql("update job_lease set free_at = ? where job = ? and holder = ?")
                    .params(free, job, holder)
                    .update();
        }
        return true;
    }

    /** Whether somebody is at it, or has done it so lately that nobody does it again yet. */
    public boolean isTaken(String job) {
        Optional<OffsetDateTime> free = jdbc.sql("select free_at from job_lease where job = ?")
                .param(job)
                .query(OffsetDateTime.class)
                .optional();
        return free.isPresent() && free.get().isAfter(now());
    }

    private boolean take(String job, OffsetDateTime now, OffsetDateTime until) {
        try {
            int taken = jdbc.sql("update job_lease set holder = ?, free_at = ? where job = ? and free_at <= ?")
                    .params(holder, until, job, now)
                    .update();
            return taken == 1 || !isKnown(job) && isFirst(job, until);
        } catch (PessimisticLockingFailureException othersAreAtIt) {
            return false;
        }
    }

    private boolean isKnown(String job) {
        return jdbc.sql("select count(*) from job_lease where job = ?")
                        .param(job)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    private boolean isFirst(String job, OffsetDateTime until) {
        try {
            return jdbc.sql("insert into job_lease (job, holder, free_at) values (?, ?, ?)")
                            .params(job, holder, until)
                            .update()
                    == 1;
        } catch (DuplicateKeyException anotherWasFaster) {
            return false;
        }
    }

    private OffsetDateTime now() {
        return jdbc.sql("select current_timestamp").query(OffsetDateTime.class).single();
    }
}
