package patinary.shop;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

interface People extends JpaRepository<Person, UUID> {

    Optional<Person> findByName(String name);

    Optional<Person> findFirstByRole(Role role);

    boolean existsByRole(Role role);

    boolean existsByNameIgnoreCase(String name);

    List<Person> findByRoleInOrderByCreatedAt(Collection<Role> roles);
}
