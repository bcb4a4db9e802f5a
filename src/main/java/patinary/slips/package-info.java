/** Reads a photo of a receipt: prepares the picture, asks the reading program, and turns its words into suggestions. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package patinary.slips;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
