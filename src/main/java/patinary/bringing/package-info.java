/**
 * Bringing in sales from a file of any shop or marketplace: reading it, saying what its columns mean, matching its rows with
 * pieces, trying it out, bringing it in and taking it back.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "shop", "web", "selling"})
package patinary.bringing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
