package yardstick;

import java.util.List;
import org.springframework.data.repository.Repository;

interface Jars extends Repository<Jar, Long> {

    List<Jar> findAllByOrderByName();
}
