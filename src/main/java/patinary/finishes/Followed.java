package patinary.finishes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.finishes.FollowedPieces.Row;

/**
 * What a finish took on the pieces that are done, beside what it says now.
 *
 * @param done pieces that are ready, sold or gone, the latest first
 * @param open how many more are still on the bench; they are not counted
 * @param minutes what was worked on a piece
 * @param cost what the supplies cost on a piece, in minor units
 * @param planned minutes that the finish says for a piece
 * @param plannedCost what its supplies would cost today on the same pieces; nothing where some quantity or cost is not known
 */
record Followed(
        List<Row> done,
        long open,
        Optional<Spread> minutes,
        Optional<Spread> cost,
        int planned,
        Optional<Spread> plannedCost) {

    static Followed of(Finish finish, List<Row> pieces, Map<UUID, Estimate.Stock> stock) {
        List<Row> done = pieces.stream().filter(Row::isDone).toList();
        return new Followed(
                done,
                pieces.size() - done.size(),
                spread(done, Row::minutes),
                spread(done, Row::costMinor),
                finish.minutes(),
                plannedCost(finish, done, stock));
    }

    /** The costs of like pieces are compared: each with its own surface. */
    private static Optional<Spread> plannedCost(Finish finish, List<Row> done, Map<UUID, Estimate.Stock> stock) {
        List<Long> costs = done.stream()
                .map(row -> cost(finish, row.area(), stock))
                .filter(Objects::nonNull)
                .toList();
        return costs.size() == done.size() ? Spread.of(costs) : Optional.empty();
    }

    private static @Nullable Long cost(Finish finish, @Nullable BigDecimal area, Map<UUID, Estimate.Stock> stock) {
        Estimate estimate = Estimate.of(finish, area, stock);
        return estimate.isAreaMissing() || estimate.isCostMissing() ? null : estimate.costMinor();
    }

    private static Optional<Spread> spread(List<Row> rows, Function<Row, Long> figure) {
        return Spread.of(rows.stream().map(figure).collect(Collectors.toList()));
    }
}
