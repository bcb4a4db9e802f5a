package patinary.selling;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.web.Choice;
import patinary.web.NotFound;

/** The channels, read and kept. */
@Service
@Transactional
class ChannelBook {

    /**
     * What is kept of a channel.
     *
     * @param newPlace the name of a money place to be made for it, or empty where {@code placeId} is one that is there
     */
    record Kept(String name, UUID placeId, String newPlace, boolean passesTax, List<FeeRule> fees) {}

    private final Channels channels;
    private final MoneyPlaces places;
    private final Trail trail;

    ChannelBook(Channels channels, MoneyPlaces places, Trail trail) {
        this.channels = channels;
        this.places = places;
        this.trail = trail;
    }

    @Transactional(readOnly = true)
    public List<ChannelFacts> all() {
        return facts(channels.findAllWithPlaces());
    }

    @Transactional(readOnly = true)
    public Optional<ChannelFacts> find(UUID id) {
        return facts(channels.findWithPlace(id)).stream().findFirst();
    }

    @Transactional(readOnly = true)
    public List<Choice> choices() {
        return channels.findAllByOrderByName().stream()
                .map(channel -> Choice.named(channel.id().toString(), channel.name()))
                .toList();
    }

    /** Whether another channel has this name already. */
    @Transactional(readOnly = true)
    public boolean nameTaken(String name, UUID own) {
        return channels.findAllByOrderByName().stream()
                .anyMatch(channel ->
                        channel.name().equalsIgnoreCase(name) && !channel.id().equals(own));
    }

    @Transactional(readOnly = true)
    public boolean placeNameTaken(String name) {
        return places.existsByNameIgnoreCase(name);
    }

    public void add(UUID id, Kept kept) {
        trail.thing("channel", id);
        if (channels.findById(id).isEmpty()) {
            channels.save(new Channel(id, kept.name(), place(kept), kept.passesTax(), kept.fees()));
        }
    }

    public void change(UUID id, long version, Kept kept) {
        Channel channel = channels.findById(id).orElseThrow(() -> new NotFound("Channel " + id));
        if (channel.version() != version) {
            throw new OptimisticLockingFailureException("Channel " + id + " is stale");
        }
        trail.thing("channel", id);
        channel.rewrite(kept.name(), place(kept), kept.passesTax(), kept.fees());
    }

    private UUID place(Kept kept) {
        if (kept.newPlace().isEmpty()) {
            return kept.placeId();
        }
        UUID id = UUID.randomUUID();
        places.save(new MoneyPlace(id, kept.newPlace(), MoneyPlace.Kind.CHANNEL));
        return id;
    }

    private static List<ChannelFacts> facts(List<Object[]> rows) {
        Map<Channel, String> places = new LinkedHashMap<>();
        rows.forEach(row -> places.put((Channel) row[0], row[1] == null ? "" : (String) row[1]));
        return places.entrySet().stream()
                .map(one -> facts(one.getKey(), one.getValue()))
                .toList();
    }

    private static ChannelFacts facts(Channel channel, String place) {
        return new ChannelFacts(
                channel.id(),
                channel.name(),
                channel.moneyPlaceId(),
                place,
                channel.passesTax(),
                channel.fees(),
                channel.version());
    }
}
