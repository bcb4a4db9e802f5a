/** Which sales, refunds and fees a payout covers, what no payout covers yet, and the gross that others report. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "shop", "web"})
package patinary.covering;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
