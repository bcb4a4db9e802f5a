package patinary.selling;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A channel as pages read it. */
record ChannelFacts(
        UUID id,
        String name,
        UUID moneyPlaceId,
        String moneyPlace,
        boolean passesTax,
        List<FeeRule> fees,
        long version) {

    Optional<FeeRule> ruleOn(LocalDate day) {
        return FeeRule.on(day, fees);
    }

    /** The latest rule, for the list. */
    public @Nullable FeeRule latest() {
        return fees.stream().max(Comparator.comparing(FeeRule::validFrom)).orElse(null);
    }
}
