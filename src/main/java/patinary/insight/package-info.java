/** What moves: read only, from the reports views. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "survival", "ledger", "shop", "web", "phone"})
package patinary.insight;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
