/** What is spent besides stock: expenses, trips, other income. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money"})
package patinary.spending;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
