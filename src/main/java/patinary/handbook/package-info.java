/** The guide and the handbook, as the project keeps them in {@code docs}, read in the program. Knows no feature. */
@NullMarked
@ApplicationModule(allowedDependencies = {"web"})
package patinary.handbook;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
