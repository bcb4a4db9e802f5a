package patinary.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test against the whole program on a real database, named by the system property {@code patinary.test.database}
 * ({@code h2}, the default, or {@code postgresql}). All such tests share one running program; each method starts with an
 * empty database and, unless {@code open} is false, with the invented shop of {@link InventedShop}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@ExtendWith(CleanShop.class)
public @interface ShopTest {

    /** Whether the shop has been set up when a test method starts. */
    boolean open() default true;
}
