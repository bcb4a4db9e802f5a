package patinary.taxyear;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.homeuse.HomeUse;
import patinary.homeuse.HomeUses;
import patinary.money.Amount;

/** The profit of a year up to a day, after the part of the use of a home that falls to its months. */
@Service
@Transactional(readOnly = true)
public class ProfitSoFar {

    private static final BigDecimal YEAR = BigDecimal.valueOf(12);

    private final YearBooks books;
    private final HomeUses homes;

    ProfitSoFar(YearBooks books, HomeUses homes) {
        this.books = books;
        this.homes = homes;
    }

    /**
     * Profit by the ledger from the first day of the year to each of the given ones, less the home's deduction for as many of twelve
     * months. How that is spread over the year is our own choice; no source.
     */
    public Map<LocalDate, Amount> upTo(int year, Collection<LocalDate> days) {
        Optional<HomeUse> home = homes.of(year);
        return days.stream()
                .distinct()
                .collect(Collectors.toMap(
                        Function.identity(), day -> afterHome(books.profit(books.first(year), day), day, home)));
    }

    private static Amount afterHome(Amount profit, LocalDate day, Optional<HomeUse> uses) {
        Amount home = uses.map(use -> use.byArea()
                        .part(BigDecimal.valueOf(day.getMonthValue()), YEAR, RoundingMode.HALF_UP)
                        .min(profit.max(Amount.ZERO)))
                .orElse(Amount.ZERO);
        return profit.minus(home);
    }
}
