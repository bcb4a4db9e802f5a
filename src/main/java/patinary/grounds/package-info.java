/** What the amounts of a year rest on: estimates, and papers that are missing. Read only. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "lists", "shop", "web", "taxbasis"})
package patinary.grounds;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
