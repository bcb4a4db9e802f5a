package patinary.shop;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.CrudRepository;

interface People extends CrudRepository<Person, UUID> {

    Optional<Person> findByName(String name);

    boolean existsByRole(Role role);
}
