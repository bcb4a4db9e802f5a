/** Bench entries: work, supplies used, what went wrong. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "money",
            "measure",
            "survival",
            "ledger",
            "lists",
            "shop",
            "web",
            "pieces",
            "supplies",
            "phone",
            "finishes",
            "mixes",
            "shelflife"
        })
package patinary.bench;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
