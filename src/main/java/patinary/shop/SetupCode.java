package patinary.shop;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Proves at first start that whoever opens the page also reads the program's console. A code lives fifteen minutes and
 * a few wrong tries; then a new one is printed. A throw-away demonstration may preset it.
 */
@Component
class SetupCode {

    private static final Logger LOG = LoggerFactory.getLogger(SetupCode.class);
    private static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private static final int LENGTH = 10;
    private static final int TRIES = 10;
    private static final Duration LIFE = Duration.ofMinutes(15);

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private final String preset;
    private String code = "";
    private Instant end = Instant.MIN;
    private int wrong;

    SetupCode(Clock clock, @Value("${patinary.setup-code:}") String preset) {
        this.clock = clock;
        this.preset = strip(preset);
    }

    /** Sees to it that a living code has been printed. */
    synchronized void offer() {
        if (!preset.isEmpty()) {
            code = preset;
        } else if (wrong >= TRIES || !clock.instant().isBefore(end)) {
            renew();
        }
    }

    synchronized boolean accepts(String typed) {
        offer();
        boolean right = MessageDigest.isEqual(
                strip(typed).getBytes(StandardCharsets.UTF_8), code.getBytes(StandardCharsets.UTF_8));
        if (!right) {
            wrong++;
        }
        return right;
    }

    private void renew() {
        StringBuilder fresh = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            fresh.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        code = fresh.toString();
        wrong = 0;
        end = clock.instant().plus(LIFE);
        LOG.warn("Setup code, good for 15 minutes: {}-{}", code.substring(0, 5), code.substring(5));
    }

    private static String strip(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }
}
