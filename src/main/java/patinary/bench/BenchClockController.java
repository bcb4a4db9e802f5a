package patinary.bench;

import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;

/** Brings the clock of a phone and the kept one together; both have the same state afterwards. */
@Controller
@RequestMapping("/bench/clock")
class BenchClockController {

    private final BenchClock clock;
    private final Clock time;

    BenchClockController(BenchClock clock, Clock time) {
        this.clock = clock;
        this.time = time;
    }

    @PostMapping(consumes = "application/json", produces = "application/json")
    ResponseEntity<ClockSync> meet(@RequestBody ClockSync sent, Principal who) {
        Instant now = time.instant();
        try {
            if (sent.timer() != null) {
                clock.keep(who.getName(), sent.readTimer(now), sent.pieces());
            }
            clock.keep(who.getName(), sent.readWaits(), now);
        } catch (IllegalArgumentException damaged) {
            return ResponseEntity.badRequest().build();
        }
        return ResponseEntity.ok(ClockSync.of(clock.of(who.getName()), clock.waits(who.getName())));
    }
}
