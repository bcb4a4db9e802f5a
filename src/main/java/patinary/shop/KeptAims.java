package patinary.shop;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/** The one row of aims; there is none until the owner says something of her own. */
@Entity
@Table(name = "aim")
class KeptAims {

    @Id
    int shopId = Shop.ONLY;

    int horizonDays;

    @Column(name = "salvage_minor")
    Amount salvage = Amount.ZERO;

    @Column(name = "target_minor")
    Amount target = Amount.ZERO;

    @Column(name = "target_percent")
    @Nullable
    Percent targetReturn;

    @Column(name = "purchase_tax_percent")
    Percent purchaseTax = Percent.ZERO;

    String priceEndings = "";

    @Version
    long version;
}
