/** What to ask for a piece, what is due when it does not sell, and what channels charge whether it sells or not. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"money", "ledger", "shop", "web", "pieces", "selling", "spending", "survival"})
package patinary.asking;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
