/** Where each piece is: reading codes from labels, the page behind a scanned label, and moving pieces between places. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "shop", "web"})
package patinary.places;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
