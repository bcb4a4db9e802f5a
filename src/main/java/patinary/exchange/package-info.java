/** The shop archive, its import and export, and the commands beside the server. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "ledger", "durable", "shop", "web", "photos"})
package patinary.exchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
