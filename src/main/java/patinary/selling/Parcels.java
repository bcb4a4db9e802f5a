package patinary.selling;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored Parcel rows. */
interface Parcels extends Repository<Parcel, UUID> {

    Optional<Parcel> findById(UUID id);

    /** With what they take in the same question. */
    @Query("select p from Parcel p left join fetch p.wraps order by p.name")
    List<Parcel> findAllByOrderByName();

    void delete(Parcel row);

    Parcel save(Parcel row);
}
