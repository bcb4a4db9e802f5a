/**
 * How a year is counted for tax where that differs from the books: income by the day of the sale or by cash received,
 * supplies when they are used or when they are bought. The books never change; what differs is derived from postings.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference", "money", "ledger", "shop", "web"})
package patinary.taxbasis;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
