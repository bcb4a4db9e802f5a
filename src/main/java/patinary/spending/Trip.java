package patinary.spending;

import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Account;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** A trip for the shop, at the rate of its date. The owner brings the car, so the other side is owner in. */
@Entity
@Table(name = "trip")
@DiscriminatorValue("TRIP")
public class Trip extends Document {

    private String purpose = "";

    private String startPlace = "";

    private String destination = "";

    private BigDecimal miles = BigDecimal.ZERO;

    private int rateTenths;

    private @Nullable UUID vehicleId;

    protected Trip() {}

    public Trip(
            UUID id,
            LocalDate date,
            String note,
            String purpose,
            String startPlace,
            String destination,
            BigDecimal miles,
            int rateTenths,
            @Nullable UUID vehicleId) {
        super(id, DocumentKind.TRIP, date, note);
        this.purpose = purpose;
        this.startPlace = startPlace;
        this.destination = destination;
        this.miles = miles;
        this.rateTenths = rateTenths;
        this.vehicleId = vehicleId;
    }

    /** Replaces everything but the id. */
    public void rewrite(
            LocalDate date,
            String note,
            String purpose,
            String startPlace,
            String destination,
            BigDecimal miles,
            int rateTenths,
            @Nullable UUID vehicleId) {
        redate(date, note);
        this.purpose = purpose;
        this.startPlace = startPlace;
        this.destination = destination;
        this.miles = miles;
        this.rateTenths = rateTenths;
        this.vehicleId = vehicleId;
    }

    @Override
    public List<Move> moves() {
        Amount cost = cost();
        return List.of(
                new Move.Post(Account.VEHICLE, Tags.NONE, cost),
                new Move.Post(Account.OWNER_IN, Tags.category("vehicle"), cost.negated()));
    }

    /** Miles times the rate, which is kept in tenths of a minor unit per mile; rounded half up once. */
    public Amount cost() {
        BigDecimal tenths = miles.multiply(BigDecimal.valueOf(rateTenths));
        return Amount.of(
                tenths.movePointLeft(1).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    public String purpose() {
        return purpose;
    }

    public String startPlace() {
        return startPlace;
    }

    public String destination() {
        return destination;
    }

    public BigDecimal miles() {
        return miles;
    }

    public int rateTenths() {
        return rateTenths;
    }

    /** The vehicle that was driven, or null where none was named. */
    public @Nullable UUID vehicleId() {
        return vehicleId;
    }
}
