package patinary.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** What the owner does about the people who help her. Her own name and password are not changed here. */
@Service
class PeopleDesk {

    /**
     * Somebody who may sign in.
     *
     * @param lastSeen on any device that is signed in now, or null
     */
    record Row(
            UUID id,
            String name,
            Role role,
            Instant since,
            @Nullable Instant lastSeen,
            long version) {

        public boolean isHelper() {
            return role == Role.HELPER;
        }
    }

    private static final int UNKNOWN_PASSWORD = 40;

    private final People people;
    private final PasswordEncoder passwords;
    private final WaysIn ways;
    private final Devices devices;
    private final Clock clock;

    PeopleDesk(People people, PasswordEncoder passwords, WaysIn ways, Devices devices, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.ways = ways;
        this.devices = devices;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public List<Row> all() {
        return people.findByRoleInOrderByCreatedAt(Set.of(Role.OWNER, Role.HELPER)).stream()
                .map(this::row)
                .toList();
    }

    private Row row(Person person) {
        return new Row(
                person.id,
                person.name,
                person.role,
                person.createdAt,
                devices.of(person.name, "").stream()
                        .map(Devices.Device::lastSeen)
                        .findFirst()
                        .orElse(null),
                person.version);
    }

    /** Whether a name is somebody's; names that differ in capitals alone would be taken for each other. */
    @Transactional(readOnly = true)
    public boolean isTaken(String name, @Nullable UUID butFor) {
        Optional<Person> own = butFor == null ? Optional.empty() : people.findById(butFor);
        boolean stillHers =
                own.filter(person -> person.name.equalsIgnoreCase(name)).isPresent();
        return !stillHers && people.existsByNameIgnoreCase(name);
    }

    /**
     * Lets a helper in.
     *
     * @return the code with which she gives herself a password
     * @throws org.springframework.dao.DataIntegrityViolationException where the name was taken meanwhile
     */
    @Transactional
    public String add(String name) {
        UUID id = UUID.randomUUID();
        // Nobody knows this password, so that she cannot come in before she has one, and is not told from others by the
        // time
        // that a refusal takes.
        String nobodys = Objects.requireNonNull(passwords.encode(Secrets.signs(UNKNOWN_PASSWORD)));
        people.saveAndFlush(new Person(id, name, nobodys, Role.HELPER, clock.instant()));
        return ways.make(id);
    }

    /** Gives a helper another name, under which she signs in anew. */
    @Transactional
    public void rename(UUID id, long version, String name) {
        Person helper = helper(id);
        if (helper.version != version) {
            throw new OptimisticLockingFailureException("The person was changed meanwhile");
        }
        String before = helper.name;
        helper.name = name;
        people.saveAndFlush(helper);
        devices.endAll(before);
    }

    /** A code for a helper who lost her password; the old password is good until she uses it. */
    @Transactional
    public String newWayIn(UUID id) {
        return ways.make(helper(id).id);
    }

    /** Ends a helper's stay on every device, and her sign-in for good. */
    @Transactional
    public String remove(UUID id) {
        Person helper = helper(id);
        people.delete(helper);
        devices.endAll(helper.name);
        return helper.name;
    }

    /** @throws NotFound where there is no such helper */
    @Transactional(readOnly = true)
    public Person helper(UUID id) {
        return people.findById(id)
                .filter(person -> person.role == Role.HELPER)
                .orElseThrow(() -> new NotFound("helper " + id));
    }
}
