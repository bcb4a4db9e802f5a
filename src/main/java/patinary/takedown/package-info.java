/** Offers that are over on one channel and still stand on another, until she has taken them down there. */
@NullMarked
@ApplicationModule(allowedDependencies = {"shop", "web", "selling"})
package patinary.takedown;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
