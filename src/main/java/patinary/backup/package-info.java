/** Backups while the shop is open, by hand and every night, and the proof that they can be restored. */
@NullMarked
@ApplicationModule(allowedDependencies = {"durable", "exchange", "jobs", "shop", "web"})
package patinary.backup;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
