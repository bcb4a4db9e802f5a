package patinary.buying;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored Source rows. */
public interface Sources extends Repository<Source, UUID> {

    Optional<Source> findById(UUID id);

    List<Source> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(Source row);

    Source save(Source row);
}
