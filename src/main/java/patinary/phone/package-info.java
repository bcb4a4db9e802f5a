/**
 * Working without reception: takes what a phone sends, each entry exactly once, and tells it the lists its forms need. A
 * feature takes an entry with a {@link patinary.phone.Delivery} and gives a list with a {@link patinary.phone.PhoneList};
 * this package knows no feature.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "ledger", "web", "shop"})
package patinary.phone;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
