/** Who bought, as far as a sale needs it, and how a buyer's traces are erased without touching a posting. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "shop", "web", "exchange", "history"})
package patinary.buyers;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
