package patinary.ledger;

import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.dao.DataAccessException;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Reads once more after a change what was looked at lately, as soon as nothing is changed for a moment: who records a sale and then looks at
 * what moves finds it read. While one change follows another nothing is read ahead, and ten minutes after the last look nothing is asked of
 * the database. {@code patinary.reads-ahead=false} makes this copy of the program never do it.
 */
@Component
@EnableScheduling
@ConditionalOnWebApplication
@ConditionalOnProperty(name = "patinary.reads-ahead", matchIfMissing = true)
class ReadAhead {

    private static final Logger LOG = LoggerFactory.getLogger(ReadAhead.class);

    private static final Duration LATELY = Duration.ofMinutes(10);

    private final Readings readings;
    private final Turn turn;
    private final TransactionTemplate reading;

    private long seen = -1;
    private long done = -1;

    ReadAhead(Readings readings, Turn turn, PlatformTransactionManager transactions) {
        this.readings = readings;
        this.turn = turn;
        this.reading = new TransactionTemplate(transactions);
        this.reading.setReadOnly(true);
    }

    @Scheduled(fixedDelayString = "PT0.5S")
    void look() {
        look(LATELY);
    }

    /** @param lately what was not asked for within this time is not read */
    void look(Duration lately) {
        var wanted = readings.askedWithin(lately);
        if (wanted.isEmpty()) {
            return;
        }
        try {
            long changes = turn.changes();
            if (changes == seen && changes != done) {
                done = changes;
                wanted.stream()
                        .takeWhile(one -> turn.changes() == changes)
                        .forEach(one -> reading.executeWithoutResult(status -> one.run()));
            }
            seen = changes;
        } catch (DataAccessException | TransactionException away) {
            LOG.debug("Not read ahead", away);
        }
    }
}
