package patinary.pieces;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The stored Piece rows. */
public interface Pieces extends Repository<Piece, UUID> {

    Optional<Piece> findById(UUID id);

    List<Piece> findAllByIdIn(Collection<UUID> ids);

    List<Piece> findAllByOrderByCode();

    boolean existsByCodeIgnoreCase(String value);

    void delete(Piece row);

    Piece save(Piece row);

    /** Stores at once, so that the next code sees this one. */
    Piece saveAndFlush(Piece row);
}
