package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The states are those of PostgreSQL 17, appendix A; the numbers those of H2's ErrorCode. */
class StoreFailureTest {

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of("PostgreSQL, disk full", new SQLException("full", "53100"), StoreFailure.FULL),
                Arguments.of(
                        "H2, disk full",
                        new SQLException("General error", "HY000", 50000, new IOException("No space left on device")),
                        StoreFailure.FULL),
                Arguments.of(
                        "Windows, disk full",
                        new SQLException("x", "90031", 90031, new IOException("There is not enough space on the disk")),
                        StoreFailure.FULL),
                Arguments.of(
                        "H2, closed because the disk is full",
                        new SQLException("closed", "90098", 90098, new IOException("No space left on device")),
                        StoreFailure.FULL),
                Arguments.of("H2, closed", new SQLException("closed", "90098", 90098), StoreFailure.GONE),
                Arguments.of("PostgreSQL, no connection", new SQLException("refused", "08001"), StoreFailure.GONE),
                Arguments.of("PostgreSQL, shut down", new SQLException("shut down", "57P01"), StoreFailure.GONE),
                Arguments.of("the pool, in vain", new SQLTransientConnectionException("timed out"), StoreFailure.GONE),
                Arguments.of(
                        "the pool, taking back",
                        new IllegalStateException(new SQLException("Connection is closed")),
                        StoreFailure.GONE),
                Arguments.of("deadlock", new SQLException("deadlock", "40P01"), StoreFailure.BUSY),
                Arguments.of("serialization", new SQLException("serialize", "40001"), StoreFailure.BUSY),
                Arguments.of("H2, lock not got", new SQLException("lock", "HYT00", 50200), StoreFailure.BUSY),
                Arguments.of(
                        "not forced",
                        new NotForced("not forced", new SQLException("closed", "90098", 90098)),
                        StoreFailure.UNSURE),
                Arguments.of("a row twice", new SQLException("unique", "23505"), StoreFailure.NONE),
                Arguments.of("no store at all", new IOException("a broken file"), StoreFailure.NONE));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("failures")
    void isToldApartHoweverDeepItLies(String what, Exception failure, StoreFailure kind) {
        assertThat(StoreFailure.of(failure)).isEqualTo(kind);
        assertThat(StoreFailure.of(new IllegalStateException(new RuntimeException(failure))))
                .isEqualTo(kind);
    }

    @Test
    void whatWasInEachOthersWayIsRunAgain() {
        AtomicInteger tries = new AtomicInteger();

        String answer = Patience.run(() -> {
            if (tries.incrementAndGet() < 3) {
                throw new IllegalStateException(new SQLException("deadlock", "40001"));
            }
            return "stored";
        });

        assertThat(answer).isEqualTo("stored");
        assertThat(tries).hasValue(3);
    }

    @Test
    void itIsNotRunAgainForEverNorForAnythingElse() {
        AtomicInteger tries = new AtomicInteger();
        assertThatThrownBy(() -> Patience.run(() -> {
                    tries.incrementAndGet();
                    throw new IllegalStateException(new SQLException("deadlock", "40001"));
                }))
                .hasRootCauseInstanceOf(SQLException.class);
        assertThat(tries).hasValue(Patience.TRIES);

        tries.set(0);
        assertThatThrownBy(() -> Patience.run(() -> {
                    tries.incrementAndGet();
                    throw new IllegalStateException(new SQLException("unique", "23505"));
                }))
                .hasRootCauseInstanceOf(SQLException.class);
        assertThat(tries).hasValue(1);
    }
}
