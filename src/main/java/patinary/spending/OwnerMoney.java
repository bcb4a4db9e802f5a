package patinary.spending;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** Money the owner puts in or takes out. */
@Entity
@Table(name = "owner_money")
@DiscriminatorValue("OWNER_MONEY")
public class OwnerMoney extends Document {

    /** Which way the money went, seen from the shop. */
    public enum Direction {
        IN,
        OUT
    }

    @Enumerated(EnumType.STRING)
    private Direction direction = Direction.IN;

    private UUID placeId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private Amount amount = Amount.ZERO;

    protected OwnerMoney() {}

    public OwnerMoney(UUID id, LocalDate date, String note, Direction direction, UUID placeId, Amount amount) {
        super(id, DocumentKind.OWNER_MONEY, date, note);
        this.direction = direction;
        this.placeId = placeId;
        this.amount = amount;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, Direction direction, UUID placeId, Amount amount) {
        redate(date, note);
        this.direction = direction;
        this.placeId = placeId;
        this.amount = amount;
    }

    @Override
    public List<Move> moves() {
        Amount into = direction == Direction.IN ? amount : amount.negated();
        Account owner = direction == Direction.IN ? Account.OWNER_IN : Account.OWNER_OUT;
        return List.of(
                new Move.Post(Account.MONEY, Tags.place(placeId), into),
                new Move.Post(owner, Tags.category("money"), into.negated()));
    }

    public Direction direction() {
        return direction;
    }

    public UUID placeId() {
        return placeId;
    }

    public Amount amount() {
        return amount;
    }
}
