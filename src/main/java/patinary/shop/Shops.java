package patinary.shop;

import org.springframework.data.repository.CrudRepository;

interface Shops extends CrudRepository<Shop, Integer> {}
