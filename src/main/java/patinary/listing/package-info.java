/** The text of an offer, made of what is known of its pieces by a pattern of her own; its lines of care; its photos to take along. */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "measure", "shop", "web", "supplies", "photos", "bench", "finishes"})
package patinary.listing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
