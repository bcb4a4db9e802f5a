package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.testing.MovedClock;
import patinary.testing.ShopTest;

/** What was looked at lately is read once more when a change is over, and only then. */
@ShopTest
class ReadAheadIT {

    private static final Duration LATELY = Duration.ofMinutes(10);

    @Autowired
    private Turn turn;

    @Autowired
    private Clock clock;

    @Autowired
    private PlatformTransactionManager transactions;

    private final AtomicInteger read = new AtomicInteger();

    private Readings readings;
    private ReadAhead ahead;
    private TransactionTemplate reading;

    @BeforeEach
    void prepare() {
        readings = new Readings(turn, clock);
        ahead = new ReadAhead(readings, turn, transactions);
        reading = new TransactionTemplate(transactions);
        reading.setReadOnly(true);
    }

    @Test
    void afterAChangeItIsReadBeforeAnybodyAsks() {
        assertThat(ask()).isOne();
        change();
        ahead.look(LATELY);
        assertThat(read).as("others may follow").hasValue(1);

        ahead.look(LATELY);
        assertThat(read).hasValue(2);
        assertThat(ask()).as("nobody has to read it any more").isEqualTo(2);
    }

    @Test
    void whileOneChangeFollowsAnotherNothingIsRead() {
        ask();
        for (int round = 0; round < 5; round++) {
            change();
            ahead.look(LATELY);
        }
        assertThat(read).hasValue(1);
    }

    @Test
    void itIsReadOnceForAChange() {
        ask();
        change();
        for (int round = 0; round < 5; round++) {
            ahead.look(LATELY);
        }
        assertThat(read).hasValue(2);
    }

    @Test
    void whatNobodyAskedForLatelyIsLeftAlone() {
        ask();
        change();
        ahead.look(Duration.ofSeconds(-1));
        ahead.look(Duration.ofSeconds(-1));
        assertThat(read).hasValue(1);
    }

    @Test
    void whatWasFoundBeforeAChangeIsNotReadAhead() {
        reading.execute(status -> readings.of("of some pieces", read::incrementAndGet));
        change();
        ahead.look(LATELY);
        ahead.look(LATELY);
        assertThat(read).hasValue(1);
    }

    @Test
    void allThatIsReadAheadIsStillThereAtItsEnd() {
        int questions = 24;
        for (int one = 0; one < questions; one++) {
            askOfTwo("numbers " + one);
        }
        change();
        ahead.look(LATELY);
        ahead.look(LATELY);
        int before = read.get();
        for (int one = 0; one < questions; one++) {
            askOfTwo("numbers " + one);
        }
        assertThat(read).as("each, and what it reads itself").hasValue(before);
    }

    @Test
    void whatIsReadWithinAReadingIsAskedForWhenThatOneWas() {
        MovedClock moved = new MovedClock();
        readings = new Readings(turn, moved);
        ahead = new ReadAhead(readings, turn, transactions);
        reading.execute(status -> readings.ahead("outer", () -> 10 * readings.ahead("inner", read::incrementAndGet)));
        moved.move(Duration.ofMinutes(9));
        change();
        readings.askedWithin(LATELY).forEach(one -> reading.executeWithoutResult(status -> one.run()));
        assertThat(readings.askedWithin(LATELY)).hasSize(2);

        moved.move(Duration.ofMinutes(2));
        assertThat(readings.askedWithin(LATELY))
                .as("reading ahead is nobody's look")
                .isEmpty();
    }

    @Test
    void whatIsChangedMeanwhileEndsIt() {
        ask();
        reading.execute(status -> readings.ahead("changes the shop", () -> {
            change();
            return read.incrementAndGet();
        }));
        int before = read.get();
        change();
        ahead.look(LATELY);
        ahead.look(LATELY);
        assertThat(read)
                .as("what was asked for last comes first; the other waits for the next quiet moment")
                .hasValue(before + 1);
    }

    @Test
    void aDatabaseThatIsAwayIsNoFailure() {
        boolean[] away = {false};
        reading.execute(status -> readings.ahead("numbers", () -> {
            if (away[0]) {
                throw new DataAccessResourceFailureException("away");
            }
            return read.incrementAndGet();
        }));
        change();
        away[0] = true;
        ahead.look(LATELY);
        ahead.look(LATELY);
        away[0] = false;
        assertThat(reading.<Integer>execute(status -> readings.ahead("numbers", read::incrementAndGet)))
                .isEqualTo(2);
    }

    private Integer ask() {
        return reading.execute(status -> readings.ahead("numbers", read::incrementAndGet));
    }

    private void askOfTwo(String what) {
        reading.execute(status -> readings.ahead(what, () -> readings.of("within " + what, read::incrementAndGet)));
    }

    private void change() {
        TransactionTemplate apart = new TransactionTemplate(transactions);
        apart.setPropagationBehavior(TransactionTemplate.PROPAGATION_REQUIRES_NEW);
        apart.executeWithoutResult(status -> turn.take());
    }
}
