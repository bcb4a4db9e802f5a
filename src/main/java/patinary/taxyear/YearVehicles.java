package patinary.taxyear;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import patinary.spending.VehicleYear;

/**
 * What the vehicle lines of a form say: miles for the business, to a steady place of work, and others. A line stays empty
 * while an odometer that it needs was not read.
 *
 * @param vehicles every vehicle of the shop
 * @param business the miles of all trips, also of those that name no vehicle
 */
record YearVehicles(List<VehicleYear> vehicles, BigDecimal business) {

    private static final Set<String> LINES = Set.of("miles_business", "miles_commuting", "miles_other");

    static YearVehicles of(List<VehicleYear> vehicles, BigDecimal business) {
        return new YearVehicles(vehicles, business);
    }

    /** Whether a line of the form asks for miles. */
    public boolean asks(String meaning) {
        return LINES.contains(meaning);
    }

    /** The miles of a line, or null while they are not known. */
    public @Nullable BigDecimal miles(String meaning) {
        return switch (meaning) {
            case "miles_business" -> business;
            case "miles_commuting" -> sum(VehicleYear::commuting);
            case "miles_other" -> sum(VehicleYear::other);
            default -> throw new IllegalArgumentException("No line of miles: " + meaning);
        };
    }

    /** The day the vehicle was first used for the shop; null where that is not known, or there are several. */
    public @Nullable LocalDate inService() {
        return vehicles.size() == 1 ? vehicles.get(0).inService() : null;
    }

    private @Nullable BigDecimal sum(Function<VehicleYear, @Nullable BigDecimal> part) {
        List<BigDecimal> known =
                vehicles.stream().map(part).filter(Objects::nonNull).toList();
        return vehicles.isEmpty() || known.size() < vehicles.size()
                ? null
                : known.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
