/** Quantities with units, areas, packs and named measures. Values only. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.measure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
