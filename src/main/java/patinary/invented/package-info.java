/** Invents shops of any size, to try the program on: nothing in them is real. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "exchange"})
package patinary.invented;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
