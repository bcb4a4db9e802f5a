package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;

/** The mileage rates of the tax office whose table the shop uses; no other office's rate is ever taken in its place. */
@Component
class TripRates {

    private static final Map<String, String> OFFICES = Map.of("us-schedule-c", "US");

    private final MileageRates rates = MileageRates.load();
    private final CurrentShop shop;

    TripRates(CurrentShop shop) {
        this.shop = shop;
    }

    Optional<MileageRate> on(LocalDate day) {
        return rates.rateOn(day, office());
    }

    /** Every known rate of the office, the latest first. */
    List<MileageRate> known() {
        return rates.all().stream()
                .filter(rate -> rate.jurisdiction().equals(office()))
                .sorted(java.util.Comparator.comparing(MileageRate::from).reversed())
                .toList();
    }

    boolean isDated(int tenths, LocalDate day) {
        return on(day).map(TripRates::tenths).filter(known -> known == tenths).isPresent();
    }

    /** A rate as it is typed: in the currency's main unit for one mile. */
    String typed(int tenths) {
        return BigDecimal.valueOf(tenths)
                .movePointLeft(shop.currency().digits() + 1)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A typed rate in tenths of a minor unit; empty where it is below zero, finer than that or beyond reason. */
    Optional<Integer> tenthsOf(BigDecimal typed) {
        try {
            int tenths = typed.movePointRight(shop.currency().digits() + 1).intValueExact();
            return Optional.of(tenths).filter(rate -> rate >= 0);
        } catch (ArithmeticException tooFine) {
            return Optional.empty();
        }
    }

    static int tenths(MileageRate rate) {
        return rate.tenthsOfACent().intValueExact();
    }

    private String office() {
        return OFFICES.getOrDefault(shop.taxTable(), "");
    }
}
