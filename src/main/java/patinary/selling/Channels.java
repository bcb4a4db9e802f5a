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

    /** Each with its fees and the name of its money place, a row for each fee. */
    @Query("select c, p.name from Channel c left join fetch c.fees left join MoneyPlace p on p.id = c.moneyPlaceId"
            + " order by c.name")
    List<Object[]> findAllWithPlaces();

    /** The same of one. */
    @Query("select c, p.name from Channel c left join fetch c.fees left join MoneyPlace p on p.id = c.moneyPlaceId"
            + " where c.id = :id")
    List<Object[]> findWithPlace(UUID id);

    boolean existsByNameIgnoreCase(String value);

    void delete(Channel row);

    Channel save(Channel row);
}
