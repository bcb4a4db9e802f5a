package patinary.sending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import patinary.money.Amount;

/**
 * One of her carriers' services with its table.
 *
 * @param placeId where its cost is usually paid from
 * @param rows in her order
 */
record Carrier(UUID id, String name, UUID placeId, long version, List<Row> rows) {

    /**
     * A row of the table as it is kept.
     *
     * @param upToG grams
     * @param upToSize as typed, or empty
     */
    record Row(UUID serviceId, LocalDate validFrom, BigDecimal upToG, String upToSize, long costMinor) {

        Rate rate() {
            return new Rate(validFrom, upToG, BoxSize.kept(upToSize), Amount.of(costMinor));
        }
    }

    RateTable table() {
        return new RateTable(rows.stream().map(Row::rate).toList());
    }
}
