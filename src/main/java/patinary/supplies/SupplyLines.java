package patinary.supplies;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored SupplyLine rows. */
public interface SupplyLines extends Repository<SupplyLine, UUID> {

    Optional<SupplyLine> findById(UUID id);

    List<SupplyLine> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(SupplyLine row);

    SupplyLine save(SupplyLine row);
}
