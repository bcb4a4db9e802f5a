package patinary.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Service;

/**
 * The devices that somebody is signed in with, each one signed-in state in the database. What is ended here is out at its next
 * request, whichever copy of the program answers it (OWASP ASVS 5.0, 7.4.3 and 7.5.2).
 */
@Service
class Devices {

    /** What the browser said of its device when it signed in. */
    static final String KIND = "patinary.device";

    /**
     * A device.
     *
     * @param mark tells it from the others, and is no help to whoever would take its place
     * @param kind a {@link DeviceKind}
     * @param here whether it is the one that asks
     */
    record Device(String mark, String kind, Instant since, Instant lastSeen, boolean here) {}

    private final ObjectProvider<FindByIndexNameSessionRepository<? extends Session>> store;
    private final Clock clock;

    /** Without a web server, as for an errand, nobody is signed in; the store of the states is then not there. */
    Devices(ObjectProvider<FindByIndexNameSessionRepository<? extends Session>> store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The devices of a person, the one last seen first. */
    List<Device> of(String person, String here) {
        return states(person)
                .map(state -> new Device(
                        Secrets.trace(state.getId()),
                        state.getAttributeOrDefault(KIND, DeviceKind.OTHER.name()),
                        state.getCreationTime(),
                        state.getLastAccessedTime(),
                        state.getId().equals(here)))
                .sorted(Comparator.comparing(Device::lastSeen).reversed())
                .toList();
    }

    /** Ends the device with this mark, if it is one of hers. */
    void end(String person, String mark) {
        states(person)
                .filter(state -> Secrets.trace(state.getId()).equals(mark))
                .forEach(this::end);
    }

    /** Ends all but the one that asks. */
    void endOthers(String person, String here) {
        states(person).filter(state -> !state.getId().equals(here)).forEach(this::end);
    }

    void endAll(String person) {
        states(person).forEach(this::end);
    }

    private void end(Session state) {
        store.getObject().deleteById(state.getId());
    }

    /** An accountant who came by a link may bear the same name; her stay is the link's. */
    private Stream<? extends Session> states(String person) {
        FindByIndexNameSessionRepository<? extends Session> states = store.getIfAvailable();
        return states == null
                ? Stream.empty()
                : states.findByPrincipalName(person).values().stream()
                        .filter(state -> state.getAttribute(AccountantRoom.LINK) == null)
                        .filter(state -> !state.isExpired() && !isOver(state));
    }

    private boolean isOver(Session state) {
        boolean own = state.getAttribute(SignedInState.OWN_DEVICE) != null;
        return SignedInState.isOver(own, state.getCreationTime(), clock.instant());
    }
}
