package patinary.shop;

import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;

/**
 * Looks once more at the password of whoever is signed in already. Wrong ones are slowed down as at the sign-in. Before what it
 * is asked for is in {@link Proofs}.
 */
@Service
class PasswordAgain {

    private final People people;
    private final PasswordEncoder passwords;
    private final Pauses pauses;

    PasswordAgain(People people, PasswordEncoder passwords, Pauses pauses) {
        this.people = people;
        this.passwords = passwords;
        this.pauses = pauses;
    }

    /**
     * Whether it is this person's password.
     *
     * @param name the name that is signed in
     * @param password as it was typed
     * @param address where the answer came from
     */
    boolean isRight(String name, String password, String address) {
        if (!pauses.mayTry(name, address)) {
            return false;
        }
        boolean right = people.findByName(name)
                .filter(person -> passwords.matches(password, person.passwordHash))
                .isPresent();
        if (right) {
            pauses.succeeded(name, address);
        }
        return right;
    }
}
