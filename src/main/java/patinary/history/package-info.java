/** Who changed what and when, for every document and what else decides figures; undoing the last change. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "figures", "shop", "web", "exchange"})
package patinary.history;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
