package patinary.supplies;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored supplies. */
public interface Supplies extends Repository<Supply, UUID> {

    Optional<Supply> findById(UUID id);

    List<Supply> findAllByOrderByName();

    boolean existsByLineIdAndNameIgnoreCase(UUID lineId, String name);

    void delete(Supply supply);

    Supply save(Supply supply);

    /** What is changed is in the tables from here on. */
    void flush();
}
