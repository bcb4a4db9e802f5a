/** Counting many supplies quickly, what the counts tell about her eye, and what to buy again. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "shop", "web", "supplies", "phone"})
package patinary.counting;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
