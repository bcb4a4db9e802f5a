/** Sees to it that what is answered as stored is on the disk, and says where a database would not keep that promise. Knows no feature. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.durable;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
