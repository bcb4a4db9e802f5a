/** Work that the program does by itself: which copy of it does it, when several run on one database. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.jobs;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
