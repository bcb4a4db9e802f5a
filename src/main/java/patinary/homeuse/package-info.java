/** The part of a home that is used for the shop only, and what the simplified way of deducting it allows. */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference", "money", "ledger", "shop"})
package patinary.homeuse;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
