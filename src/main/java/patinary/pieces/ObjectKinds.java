package patinary.pieces;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored ObjectKind rows. */
public interface ObjectKinds extends Repository<ObjectKind, UUID> {

    Optional<ObjectKind> findById(UUID id);

    List<ObjectKind> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(ObjectKind row);

    ObjectKind save(ObjectKind row);
}
