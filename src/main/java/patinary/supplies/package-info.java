/** Supply lines, supplies, their packs and measures, what is left of them, counts and takings from the shelf. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "figures", "shop", "web"})
package patinary.supplies;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
