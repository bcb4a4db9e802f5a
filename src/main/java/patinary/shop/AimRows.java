package patinary.shop;

import org.springframework.data.repository.CrudRepository;

interface AimRows extends CrudRepository<KeptAims, Integer> {}
