/** The dated data that comes with the program, as rows; what they mean is said where they are used. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.reference;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
