/** The records of a year and the dated tax tables: read only, but for the seal of a year and what goes on which line. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "reference",
            "money",
            "ledger",
            "covering",
            "shop",
            "web",
            "spending",
            "taxbasis",
            "homeuse"
        })
package patinary.taxyear;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
