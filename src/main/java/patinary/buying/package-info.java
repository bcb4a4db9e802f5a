/** Sources, receipts, returns to suppliers and bills paid. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "reference",
            "money",
            "measure",
            "ledger",
            "lists",
            "shop",
            "web",
            "phone",
            "photos",
            "pieces",
            "slips",
            "spending",
            "supplies"
        })
package patinary.buying;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
