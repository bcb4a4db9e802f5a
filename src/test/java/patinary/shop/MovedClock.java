package patinary.shop;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test moves. */
final class MovedClock extends Clock {

    private Instant moment = Instant.parse("2025-03-01T09:00:00Z");

    void move(Duration by) {
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
