package patinary.pieces;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The stored Piece rows. */
public interface Pieces extends Repository<Piece, UUID> {

    Optional<Piece> findById(UUID id);

    /** With its tags in the same question. */
    @Query("select p from Piece p left join fetch p.tags where p.id = :id")
    Optional<Piece> findWithTags(UUID id);

    /** With their tags in the same question. */
    @Query("select p from Piece p left join fetch p.tags where p.id in :ids")
    List<Piece> findAllByIdIn(Collection<UUID> ids);

    List<Piece> findAllByOrderByCode();

    boolean existsByCodeIgnoreCase(String value);

    void delete(Piece row);

    Piece save(Piece row);

    /** Stores at once, so that the next code sees this one. */
    Piece saveAndFlush(Piece row);
}
