/** What is left of sheets: where cuts may have been taken, drawn. Reads only. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "supplies", "web"})
package patinary.sheets;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
