package patinary.ledger;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * One way in which a document is paid.
 *
 * @param line order on the document, from 1
 * @param way how
 * @param placeId the money place, where the way is {@link Way#PLACE}
 * @param amount how much
 */
@Embeddable
public record Tender(
        int line,
        @Enumerated(EnumType.STRING) Way way,
        @Nullable UUID placeId,
        @Column(name = "amount_minor") Amount amount) {

    /** What she pays with this, credit where she owes or gives. */
    public Move paidOut(@Nullable UUID party) {
        return switch (way) {
            case PLACE -> new Move.Post(Account.MONEY, Tags.place(placeId), amount.negated());
            case OWED -> new Move.Post(Account.PAYABLE, Tags.NONE, amount.negated());
            case STORE_CREDIT -> new Move.Post(Account.STORE_CREDIT_HELD, Tags.party(party), amount.negated());
            case OWNER -> new Move.Post(Account.OWNER_IN, Tags.NONE, amount.negated());
            case DEPOSIT -> throw new IllegalStateException("A buyer's deposit pays no purchase");
        };
    }

    /** What she is paid with this by a buyer. */
    public Move paidIn() {
        return switch (way) {
            case PLACE -> new Move.Post(Account.MONEY, Tags.place(placeId), amount);
            case OWED -> new Move.Post(Account.RECEIVABLE, Tags.NONE, amount);
            case DEPOSIT -> new Move.Post(Account.CUSTOMER_DEPOSITS, Tags.NONE, amount);
            case STORE_CREDIT -> new Move.Post(Account.STORE_CREDIT_GIVEN, Tags.NONE, amount);
            case OWNER -> throw new IllegalStateException("The owner is not her own buyer");
        };
    }
}
