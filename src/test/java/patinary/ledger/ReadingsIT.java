package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.testing.ShopTest;

/** A reading is kept as long as nothing changes, and not a change longer. */
@ShopTest
class ReadingsIT {

    private static final String STYLES = "select count(*) from style";

    @Autowired
    private Readings readings;

    @Autowired
    private Turn turn;

    @Autowired
    private Clock clock;

    @Autowired
    private Trail trail;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PlatformTransactionManager transactions;

    private final AtomicInteger read = new AtomicInteger();

    private TransactionTemplate reading;
    private TransactionTemplate writing;

    @BeforeEach
    void prepare() {
        reading = new TransactionTemplate(transactions);
        reading.setReadOnly(true);
        writing = new TransactionTemplate(transactions);
    }

    @Test
    void whatWasReadIsNotReadAgainUntilSomethingChanges() {
        assertThat(styles()).isZero();
        assertThat(styles()).isZero();
        assertThat(read).hasValue(1);

        writing.executeWithoutResult(status -> {
            newStyle();
            assertThat(styles()).as("to others it is not there yet").isZero();
        });
        assertThat(styles()).isOne();
        assertThat(read).hasValue(2);
    }

    @Test
    void whoWritesSeesItsOwnAndLeavesNothingOfItToOthers() {
        assertThatThrownBy(() -> writing.executeWithoutResult(status -> {
                    newStyle();
                    assertThat(count()).isOne();
                    throw new IllegalStateException("not stored");
                }))
                .hasMessage("not stored");
        writing.executeWithoutResult(status -> turn.take());

        assertThat(styles()).isZero();
    }

    @Test
    void anotherCopyOfTheProgramTellsByTheNumberOfChanges() {
        Readings another = new Readings(turn, clock);
        assertThat(styles()).isZero();
        assertThat(styles(another)).isZero();

        writing.executeWithoutResult(status -> newStyle());
        assertThat(styles(another)).isOne();
        assertThat(styles()).isOne();
    }

    @Test
    void whatIsReadWithinAReadingIsKeptToo() {
        assertThat(reading.<Integer>execute(status -> readings.of("both", () -> 10 + count())))
                .isEqualTo(10);
        assertThat(styles()).isZero();
        assertThat(read).hasValue(1);
    }

    @Test
    void twoWhoAskAtOnceWaitForOneReading() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            List<Future<Integer>> told = List.of(
                    people.submit(() -> reading.execute(status -> readings.of("slow", () -> {
                        begun.countDown();
                        pause();
                        return read.incrementAndGet();
                    }))),
                    people.submit(() -> {
                        begun.await();
                        return reading.execute(status -> readings.of("slow", read::incrementAndGet));
                    }));
            for (Future<Integer> one : told) {
                assertThat(one.get(10, TimeUnit.SECONDS)).isOne();
            }
        } finally {
            people.shutdownNow();
        }
    }

    @Test
    void aReadingThatFailsIsNotKept() {
        assertThatThrownBy(() -> reading.execute(status -> readings.of("styles", () -> {
                    throw new IllegalStateException("not read");
                })))
                .hasMessage("not read");
        assertThat(styles()).isZero();
    }

    private int styles() {
        return styles(readings);
    }

    private int styles(Readings kept) {
        TransactionTemplate apart = new TransactionTemplate(transactions);
        apart.setReadOnly(true);
        apart.setPropagationBehavior(TransactionTemplate.PROPAGATION_REQUIRES_NEW);
        return apart.<Integer>execute(status -> kept.of("styles", this::counted));
    }

    private int count() {
        return readings.of("styles", this::counted);
    }

    private int counted() {
        read.incrementAndGet();
        return jdbc.sql(STYLES).query(Integer.class).single();
    }

    /** As every change outside the books is made: the trail hears of it first. */
    private void newStyle() {
        UUID id = UUID.randomUUID();
        trail.thing("style", id);
        jdbc.sql("insert into style (id, name, version) values (?, 'Marbled, invented', 0)")
                .param(id)
                .update();
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(300);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
