package patinary.selling;

import java.util.Optional;
import java.util.UUID;

/** Reads an id out of an address; what is none asks for nothing. */
final class Ids {

    private Ids() {}

    static Optional<UUID> read(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }
}
