package patinary.supplies;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored bundles. */
public interface Bundles extends Repository<Bundle, UUID> {

    Optional<Bundle> findById(UUID id);

    List<Bundle> findAllByRemovedFalseOrderByName();

    Bundle save(Bundle bundle);
}
