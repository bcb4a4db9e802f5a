package patinary.insight;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.survival.Exit;

/** Reads how fast pieces sell: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class Speeds {

    private static final String TAKEN_OVER = "select piece_id, on_day from piece_taken_over";

    private static final String FIRST_PRICES =
            "select offer_id, first_price_minor from offer_state where first_price_minor is not null";

    /**
     * A page of speeds.
     *
     * @param bands the three price bands, or null where nothing has a price
     */
    record Answer(SpeedTable table, @Nullable PriceBands bands) {}

    private record Stood(LocalDate today) {}

    private record Where(List<Only> chosen, LocalDate today) {}

    private record Asking(SpeedBy by, List<Only> chosen, LocalDate today) {}

    private final JdbcClient jdbc;
    private final Moves moves;
    private final Readings readings;

    Speeds(JdbcClient jdbc, Moves moves, Readings readings) {
        this.jdbc = jdbc;
        this.moves = moves;
        this.readings = readings;
    }

    Answer answer(SpeedBy by, Narrowing narrowing, LocalDate today) {
        return narrowing.kept(readings, new Asking(by, narrowing.chosen(), today), those -> reckoned(by, those, today));
    }

    /** Where the same pieces sold, and by when. */
    SoldWhere where(Narrowing narrowing, LocalDate today) {
        return narrowing.kept(
                readings,
                new Where(narrowing.chosen(), today),
                those -> SoldWhere.of(
                        those.of(rounds(today)), moves.channelNames().values()));
    }

    private Answer reckoned(SpeedBy by, Narrowing narrowing, LocalDate today) {
        Map<UUID, List<String>> groups = by.ofPieces() ? moves.groupsOfPieces(by.word()) : Map.of();
        List<Round> those = narrowing.of(rounds(today));
        Map<UUID, Amount> prices = by == SpeedBy.PRICE ? prices() : Map.of();
        PriceBands bands = by == SpeedBy.PRICE ? moves.bands() : null;
        Function<Round, Collection<String>> grouping = switch (by) {
            case SEASON -> round -> List.of(Quarters.of(round.from()));
            case PRICE -> round -> PriceBands.groups(prices.get(round.offer()), bands);
            default -> round -> groups.getOrDefault(round.piece(), List.of(""));
        };
        return new Answer(SpeedTable.of(those, grouping), bands);
    }

    /** The rounds of all pieces as they stand on a day. */
    List<Round> rounds(LocalDate today) {
        return readings.ahead(
                new Stood(today), () -> Rounds.of(moves.offers(), PieceDays.of(jdbc.sql(TAKEN_OVER)), today));
    }

    /** Some rounds, the quickest sold first, then what is still on offer, then what was withdrawn. */
    static List<Round> inOrder(List<Round> rounds) {
        return rounds.stream()
                .sorted(Comparator.comparing((Round round) -> round.stay().exit() == Exit.WITHDRAWN)
                        .thenComparing(round -> round.stay().exit())
                        .thenComparingInt(round -> round.stay().days()))
                .toList();
    }

    private Map<UUID, Amount> prices() {
        Map<UUID, Amount> prices = new HashMap<>();
        jdbc.sql(FIRST_PRICES).query(row -> {
            prices.put(row.getObject(1, UUID.class), Amount.of(row.getLong(2)));
        });
        return prices;
    }
}
