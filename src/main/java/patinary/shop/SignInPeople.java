package patinary.shop;

import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;

/** Finds who wants to sign in. */
@Service
class SignInPeople implements UserDetailsService {

    private final People people;

    SignInPeople(People people) {
        this.people = people;
    }

    @Override
    public UserDetails loadUserByUsername(String name) {
        Person person = people.findByName(name).orElseThrow(() -> new UsernameNotFoundException("unknown"));
        return User.withUsername(person.name)
                .password(person.passwordHash)
                .roles(person.role.name())
                .build();
    }
}
