package patinary.supplies;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored supplies. */
public interface Supplies extends Repository<Supply, UUID> {

    /** What belongs to a supply comes with it, a row for each that goes with each: of every list a supply has a few. */
    String WHOLE =
            " left join fetch s.packs left join fetch s.measures left join fetch s.motifs left join fetch s.changes";

    Optional<Supply> findById(UUID id);

    @Query("select s from Supply s" + WHOLE + " where s.id in :ids")
    List<Supply> findAllByIdIn(Collection<UUID> ids);

    /** With their packs in the same question. */
    @Query("select s from Supply s left join fetch s.packs order by s.name")
    List<Supply> findAllByOrderByName();

    /** Every supply with its line, by name. */
    @Query("select s, l from Supply s" + WHOLE + " join SupplyLine l on l.id = s.lineId order by s.name")
    List<Object[]> findAllWithLines();

    /** The same of one. */
    @Query("select s, l from Supply s" + WHOLE + " join SupplyLine l on l.id = s.lineId where s.id = :id")
    List<Object[]> findWithLine(UUID id);

    boolean existsByLineIdAndNameIgnoreCase(UUID lineId, String name);

    void delete(Supply supply);

    Supply save(Supply supply);

    /** What is changed is in the tables from here on. */
    void flush();
}
