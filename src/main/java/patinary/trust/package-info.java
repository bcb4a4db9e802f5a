/** The shop's own HTTPS: its authority, its certificate, and the page that leads a phone to trust it. */
@NullMarked
@ApplicationModule(allowedDependencies = {"web"})
package patinary.trust;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
