package patinary.spending;

import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.web.NotFound;

/** Keeps the money places. */
@Service
class PlaceDesk {

    private static final String TABLE = "money_place";

    private final MoneyPlaces places;
    private final Trail trail;

    PlaceDesk(MoneyPlaces places, Trail trail) {
        this.places = places;
        this.trail = trail;
    }

    /** @throws NotFound where there is no such place */
    @Transactional(readOnly = true)
    public MoneyPlace find(UUID id) {
        return places.findById(id).orElseThrow(() -> new NotFound("money place " + id));
    }

    @Transactional(readOnly = true)
    public boolean isTaken(String name) {
        return places.existsByNameIgnoreCase(name);
    }

    @Transactional
    public void add(String name, MoneyPlace.Kind kind) {
        UUID id = UUID.randomUUID();
        trail.thing(TABLE, id);
        places.save(new MoneyPlace(id, name, kind));
    }

    /** @throws OptimisticLockingFailureException where it was changed since the form was drawn */
    @Transactional
    public void change(UUID id, long version, String name, MoneyPlace.Kind kind) {
        MoneyPlace place = find(id);
        if (place.version() != version) {
            throw new OptimisticLockingFailureException("The money place changed in between: " + id);
        }
        trail.thing(TABLE, id);
        place.rewrite(name, kind);
        places.save(place);
    }
}
