package patinary.shop;

import java.util.Objects;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** What a person changes about her own way to sign in. */
@Service
class OwnSignIn {

    private final People people;
    private final PasswordEncoder passwords;

    OwnSignIn(People people, PasswordEncoder passwords) {
        this.people = people;
        this.passwords = passwords;
    }

    @Transactional
    public void change(String name, String password) {
        Person person = people.findByName(name).orElseThrow(() -> new NotFound("person"));
        person.passwordHash = Objects.requireNonNull(passwords.encode(password));
        people.save(person);
    }
}
