/**
 * What is agreed with other people: work on a buyer's own piece, pieces sold for their owners, her pieces in somebody else's
 * shop, supplies received free, credit that buyers hold, and other income by category.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "shop", "web", "pieces", "supplies", "selling"})
package patinary.arrangements;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
