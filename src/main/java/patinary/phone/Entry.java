package patinary.phone;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An entry as it came in.
 *
 * @param key its id, made on the phone
 * @param who the account it came from; a key means something within one account
 * @param fingerprint tells whether the same key comes with the same content
 * @param capturedAt when it was made, by the phone's clock
 * @param formVersion the version of the form it was made with
 */
record Entry(
        UUID key, String who, String fingerprint, @Nullable Instant capturedAt, int formVersion) {

    /** What two requests for the same entry have in common. */
    Id id() {
        return new Id(who, key);
    }

    record Id(String who, UUID key) {}
}
