package patinary.discounts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.ListCrudRepository;

interface DiscountCodes extends ListCrudRepository<DiscountCode, UUID> {

    Optional<DiscountCode> findByCodeIgnoreCase(String code);

    List<DiscountCode> findAllByOrderByCode();
}
