/** What the lists share that begin with the latest: how they are narrowed, how far back a page of one reaches, what all of it comes to. */
@NullMarked
@ApplicationModule(allowedDependencies = {"ledger", "web"})
package patinary.lists;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
