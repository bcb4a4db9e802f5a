package patinary.selling;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored Channel rows. */
public interface Channels extends Repository<Channel, UUID> {

    Optional<Channel> findById(UUID id);

    /** With their fees in the same question. */
    @Query("select c from Channel c left join fetch c.fees order by c.name")
    List<Channel> findAllByOrderByName();

    boolean existsByNameIgnoreCase(String value);

    void delete(Channel row);

    Channel save(Channel row);
}
