/** Channels, offers, sales, payments, refunds, postage and payouts. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "money",
            "measure",
            "ledger",
            "lists",
            "shop",
            "web",
            "salestax",
            "covering",
            "pieces",
            "supplies",
            "phone",
            "discounts"
        })
package patinary.selling;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
