package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.testing.ShopTest;

/** Several people, at one copy of the program or at several, add pieces at the same moment: each piece has a code of its own. */
@ShopTest
class NextCodeIT {

    private static final int PEOPLE = 4;
    private static final int ROUNDS = 10;

    @Autowired
    private NewPieces pieces;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void isDrawnByOneAtATime() throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                CyclicBarrier start = new CyclicBarrier(PEOPLE);
                List<Future<?>> made = new ArrayList<>();
                for (int person = 0; person < PEOPLE; person++) {
                    made.add(people.submit(() -> {
                        start.await();
                        return transaction.execute(status -> pieces.create("Tin box", null, null));
                    }));
                }
                for (Future<?> one : made) {
                    one.get();
                }
            }
        } finally {
            people.shutdownNow();
        }
        assertThat(jdbc.sql("select count(distinct code) from piece")
                        .query(Long.class)
                        .single())
                .isEqualTo((long) PEOPLE * ROUNDS);
    }
}
