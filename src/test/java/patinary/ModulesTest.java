package patinary;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** The modules know only whom they say they know, and never in a circle. */
class ModulesTest {

    @Test
    void keepToTheirNeighbours() {
        ApplicationModules.of(Patinary.class).verify();
    }
}
