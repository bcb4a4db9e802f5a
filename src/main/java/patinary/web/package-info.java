/** The shell around every page: layout, fields, words for amounts and dates, error pages. Knows no feature. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "durable"})
package patinary.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
