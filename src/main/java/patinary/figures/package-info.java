/**
 * Kept figures: tables that hold what the books say of each piece, sale and offer, filled by one SQL definition each and
 * renewed with every change of the books. docs/decisions/0020-kept-figures.md says why.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"ledger", "durable"})
package patinary.figures;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
