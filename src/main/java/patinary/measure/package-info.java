/** Quantities with units, areas, packs and named measures. Values only: this package depends on no other. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.measure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
