/** Her own places and dated rates of sales tax, and what was charged, given back and paid over by place and period. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "shop", "web"})
package patinary.salestax;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
