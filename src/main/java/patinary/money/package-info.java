/** Amounts, percentages and the sharing of amounts. Values only. */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference"})
package patinary.money;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
