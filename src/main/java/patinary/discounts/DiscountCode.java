package patinary.discounts;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/** One of her codes, kept. */
@Entity
@Table(name = "discount_code")
class DiscountCode {

    @Id
    private UUID id = new UUID(0, 0);

    private String code = "";
    private @Nullable Percent percent;

    @Column(name = "amount_minor")
    private @Nullable Amount amount;

    private LocalDate validFrom = LocalDate.EPOCH;
    private @Nullable LocalDate validTo;
    private String note = "";

    @Version
    private long version;

    protected DiscountCode() {}

    DiscountCode(UUID id, Discount discount, String note) {
        this.id = id;
        rewrite(discount, note);
    }

    final void rewrite(Discount discount, String newNote) {
        code = discount.code();
        percent = discount.percent();
        amount = discount.amount();
        validFrom = discount.validFrom();
        validTo = discount.validTo();
        note = newNote;
    }

    UUID id() {
        return id;
    }

    Discount discount() {
        return new Discount(code, percent, amount, validFrom, validTo);
    }

    String note() {
        return note;
    }

    long version() {
        return version;
    }
}
