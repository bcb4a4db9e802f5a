/** How much to mix, and whether a pot has too much of an additive. Stores nothing. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "supplies", "shop", "web"})
package patinary.mixes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
