/** What was there on the first day, as one document. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "shop", "web", "pieces", "supplies"})
package patinary.opening;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
