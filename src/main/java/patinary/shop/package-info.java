/** The shop's settings, the people who work with it, first start and sign-in. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "web", "durable"})
package patinary.shop;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
