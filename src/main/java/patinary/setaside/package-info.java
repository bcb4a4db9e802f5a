/** An estimate of what to set aside for the taxes of a year. It is no posting and no advice. */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference", "money", "ledger", "shop", "web", "taxyear", "taxbasis"})
package patinary.setaside;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
