/** What is sold and not yet sent: what to pack, what it costs to send, and what becomes of what the mail lost. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"money", "measure", "ledger", "shop", "web", "supplies", "selling", "spending"})
package patinary.sending;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
