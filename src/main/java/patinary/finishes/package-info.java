/** Finishes: the saved ways of doing a look, what they take, and what they took. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "shop", "web", "supplies"})
package patinary.finishes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
