package patinary.shop;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import patinary.ledger.StockMethod;

/** The one shop of this database. Currency and first day are fixed at the start: every record is counted in them. */
@Entity
@Table(name = "shop")
@SuppressWarnings("NullAway.Init")
class Shop {

    static final int ONLY = 1;

    @Id
    int id = ONLY;

    String name;

    String currency;

    @Column(name = "minor_digits")
    int minorDigits;

    @Enumerated(EnumType.STRING)
    @Column(name = "costing_method")
    StockMethod costingMethod;

    @Column(name = "hourly_rate_minor")
    long hourlyRateMinor;

    @Column(name = "tax_table")
    String taxTable;

    @Column(name = "first_day")
    LocalDate firstDay;

    @Column(name = "time_zone")
    String timeZone;

    String language;

    String country;

    @Column(name = "created_at")
    Instant createdAt;

    @Version
    long version;
}
