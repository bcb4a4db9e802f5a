package patinary.shop;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored MoneyPlace rows. */
public interface MoneyPlaces extends Repository<MoneyPlace, UUID> {

    Optional<MoneyPlace> findById(UUID id);

    List<MoneyPlace> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(MoneyPlace row);

    MoneyPlace save(MoneyPlace row);
}
