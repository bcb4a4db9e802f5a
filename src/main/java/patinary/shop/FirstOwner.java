package patinary.shop;

import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gives a shop that came out of an archive somebody who may sign in: archives hold no people and no passwords. */
@Service
public class FirstOwner {

    private static final int LENGTH = 20;

    private final People people;
    private final PasswordEncoder passwords;
    private final Clock clock;

    FirstOwner(People people, PasswordEncoder passwords, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.clock = clock;
    }

    public boolean isMissing() {
        return !people.existsByRole(Role.OWNER);
    }

    /** @throws IllegalStateException where the shop has an owner */
    @Transactional
    public void make(String name, String password) {
        if (!isMissing()) {
            throw new IllegalStateException("The shop has an owner already");
        }
        String hash = Objects.requireNonNull(passwords.encode(password));
        people.save(new Person(UUID.randomUUID(), name, hash, Role.OWNER, clock.instant()));
    }

    /** A password that nobody can guess: twenty signs of a set of 31, about 99 bits. */
    public static String password() {
        return Secrets.signs(LENGTH);
    }
}
