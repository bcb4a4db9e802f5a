/** How long what is on the shelf keeps: opened days, use-by days, what to use first. Hints; no sum reads them. */
@NullMarked
@ApplicationModule(allowedDependencies = {"measure", "supplies", "shop", "web"})
package patinary.shelflife;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
