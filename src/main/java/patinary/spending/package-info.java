/** Expenses, trips and mileage rates, other income, sales tax paid over, owner money and money places. */
@NullMarked
@ApplicationModule(allowedDependencies = {"reference", "money", "ledger", "lists", "shop", "web", "salestax"})
package patinary.spending;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
