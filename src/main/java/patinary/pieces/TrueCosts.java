package patinary.pieces;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.shop.CurrentShop;

/** What pieces truly cost, as their cost cards say it, for those who name a price. */
@Service
@Transactional(readOnly = true)
public class TrueCosts {

    /**
     * What one piece took.
     *
     * @param landed all the money in it
     * @param minutes of work at the bench
     * @param work those minutes at her own hourly rate
     * @param trip its share of the buying trips
     * @param uncosted whether a supply was used on it that no receipt has given a cost yet
     */
    public record Cost(UUID pieceId, Amount landed, BigDecimal minutes, Amount work, Amount trip, boolean uncosted) {}

    private record Row(UUID pieceId, long landedMinor, BigDecimal minutes, boolean uncosted) {}

    private final JdbcClient jdbc;
    private final BuyingTrips trips;
    private final CurrentShop shop;

    TrueCosts(JdbcClient jdbc, BuyingTrips trips, CurrentShop shop) {
        this.jdbc = jdbc;
        this.trips = trips;
        this.shop = shop;
    }

    /** The costs of a few pieces; what is no piece is left out. */
    public List<Cost> of(Collection<UUID> pieces) {
        if (pieces.isEmpty()) {
            return List.of();
        }
        return jdbc
                .sql("select piece_id, landed_minor, minutes, uncosted from piece_figures where piece_id in (:pieces)")
                .param("pieces", pieces)
                .query(Row.class)
                .list()
                .stream()
                .map(this::cost)
                .toList();
    }

    private Cost cost(Row row) {
        Amount trip =
                trips.of(row.pieceId()).stream().map(CostCard.TripPart::share).collect(Amount.sum());
        TrueCost all = TrueCost.of(Amount.of(row.landedMinor()), row.minutes(), shop.hourlyRate(), trip);
        return new Cost(row.pieceId(), all.landed(), row.minutes(), all.work(), all.trip(), row.uncosted());
    }
}
