/** What moves, and what is worth making: days to sell, money by group, what to pay, what to make next. Read only. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "survival", "ledger", "shop", "taxbasis", "web", "phone"})
package patinary.insight;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
