/**
 * Time until a piece sells, with the pieces that have not sold yet counted: survival analysis for small groups. Sums only;
 * this package depends on no other. docs/handbook/days-to-sell.md has formulas, sources and a worked example.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.survival;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
