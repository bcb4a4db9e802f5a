package patinary.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test moves. */
public final class MovedClock extends Clock {

    private Instant moment;

    public MovedClock() {
        this(Instant.parse("2025-03-01T09:00:00Z"));
    }

    public MovedClock(Instant moment) {
        this.moment = moment;
    }

    public void move(Duration by) {
        moment = moment.plus(by);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return moment;
    }
}
