package patinary.pieces;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored Style rows. */
public interface Styles extends Repository<Style, UUID> {

    Optional<Style> findById(UUID id);

    List<Style> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(Style row);

    Style save(Style row);
}
