package patinary.shop;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Slows guessing down: after a few failures each further one doubles a pause, for the account and for the address it
 * came from. The account's pause stays short, so that nobody can lock the owner out by guessing; the address's grows.
 */
@Component
class Pauses {

    private static final int FREE_TRIES = 4;
    private static final int MOST_KEPT = 10_000;
    private static final Duration ACCOUNT_LIMIT = Duration.ofSeconds(15);
    private static final Duration ADDRESS_LIMIT = Duration.ofMinutes(15);
    private static final Duration FORGET = Duration.ofHours(24);

    private record Tries(int failures, Instant last, Instant until) {}

    private final Clock clock;

    private final Map<String, Tries> kept = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Tries> eldest) {
            return size() > MOST_KEPT;
        }
    };

    Pauses(Clock clock) {
        this.clock = clock;
    }

    synchronized boolean isPaused(String name, String address) {
        return waits(account(name)) || waits(address(address));
    }

    synchronized void failed(String name, String address) {
        count(account(name), ACCOUNT_LIMIT);
        count(address(address), ADDRESS_LIMIT);
    }

    synchronized void succeeded(String name, String address) {
        kept.remove(account(name));
        kept.remove(address(address));
    }

    private boolean waits(String key) {
        Tries tries = kept.get(key);
        return tries != null && clock.instant().isBefore(tries.until);
    }

    private void count(String key, Duration limit) {
        Instant moment = clock.instant();
        Tries before = kept.get(key);
        boolean forgotten = before == null || before.last.plus(FORGET).isBefore(moment);
        int failures = forgotten ? 1 : before.failures + 1;
        kept.put(key, new Tries(failures, moment, moment.plus(pause(failures, limit))));
    }

    private static Duration pause(int failures, Duration limit) {
        if (failures <= FREE_TRIES) {
            return Duration.ZERO;
        }
        Duration grown = Duration.ofSeconds(1L << Math.min(failures - FREE_TRIES - 1, 20));
        return grown.compareTo(limit) < 0 ? grown : limit;
    }

    private static String account(String name) {
        return "account " + name;
    }

    private static String address(String address) {
        return "address " + address;
    }
}
