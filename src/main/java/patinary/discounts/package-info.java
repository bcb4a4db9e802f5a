/** The codes with which buyers get something off, and what each of them gave. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "shop", "web"})
package patinary.discounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
