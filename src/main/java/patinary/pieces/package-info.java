/** Pieces, their lists of styles and kinds, the cost card, and what happens to a piece without a sale. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "figures", "lists", "shop", "web"})
package patinary.pieces;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
