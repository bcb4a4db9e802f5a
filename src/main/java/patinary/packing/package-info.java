/** Market days: what goes along, what is packed, what came home. No documents: no money moves by packing. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "shop", "web", "places"})
package patinary.packing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
