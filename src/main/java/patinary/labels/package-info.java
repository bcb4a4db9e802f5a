/** Labels for pieces: grids of sheets and rolls, the square to be scanned, and the file that is printed. */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference", "money", "measure", "shop", "web", "places"})
package patinary.labels;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
