package patinary.shop;

import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;

/**
 * Asks who is signed in already for the password once more, before something that a device left open must not allow
 * (OWASP ASVS 5.0, 7.5: before a highly sensitive step). Wrong answers are slowed down as at the sign-in.
 */
@Service
public class PasswordAgain {

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
    public boolean isRight(String name, String password, String address) {
        if (pauses.isPaused(name, address)) {
            return false;
        }
        boolean right = people.findByName(name)
                .filter(person -> passwords.matches(password, person.passwordHash))
                .isPresent();
        if (right) {
            pauses.succeeded(name, address);
        } else {
            pauses.failed(name, address);
        }
        return right;
    }
}
