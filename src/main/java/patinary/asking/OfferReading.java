package patinary.asking;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** Reads offers for the list of mark-downs. */
@Repository
@Transactional(readOnly = true)
class OfferReading {

    /** Live and not paused today. */
    private static final String OPEN = """
            select os.offer_id, o.title, os.started_on, os.first_price_minor, os.price_minor
            from offer_state os
            left join offer o on o.id = os.offer_id
            where os.state = 'LIVE' and not exists (
                select 1 from offer_piece op join piece_owner po on po.piece_id = op.piece_id
                where op.offer_id = os.offer_id) and not exists (
                select 1 from offer_pause pa
                where pa.offer_id = os.offer_id and pa.paused_from <= :today
                  and (pa.paused_to is null or pa.paused_to >= :today))
            order by os.started_on, os.offer_id""";

    /** Offers that ask another price from a day on than before. */
    private static final String CHANGED = """
            select os.offer_id, o.title, os.started_on,
                   (select op.price_minor from offer_price op
                    where op.offer_id = os.offer_id and op.valid_from < :day
                    order by op.valid_from desc fetch first 1 row only) as first_price_minor,
                   os.price_minor
            from offer_state os
            left join offer o on o.id = os.offer_id
            where os.state = 'LIVE'
              and exists (select 1 from offer_price op where op.offer_id = os.offer_id and op.valid_from = :day)
              and exists (select 1 from offer_price op where op.offer_id = os.offer_id and op.valid_from < :day)
            order by o.title, os.offer_id""";

    private record CodeRow(UUID offerId, String code) {}

    private record CostRow(UUID pieceId, long landedMinor) {}

    private record PieceRow(UUID offerId, UUID pieceId) {}

    private record ChannelRow(UUID offerId, UUID channelId) {}

    private final JdbcClient jdbc;

    OfferReading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<OpenOffer> open(LocalDate today) {
        return jdbc.sql(OPEN).param("today", today).query(OpenOffer.class).list();
    }

    /** With the price before in the place of the first price. */
    List<OpenOffer> changed(LocalDate day) {
        return jdbc.sql(CHANGED).param("day", day).query(OpenOffer.class).list();
    }

    Map<UUID, String> codes(Collection<UUID> offers) {
        return offers.isEmpty()
                ? Map.of()
                : jdbc
                        .sql("select op.offer_id, p.code from offer_piece op join piece p on p.id = op.piece_id"
                                + " where op.offer_id in (:ids) order by p.code")
                        .param("ids", offers)
                        .query(CodeRow.class)
                        .list()
                        .stream()
                        .collect(Collectors.groupingBy(
                                CodeRow::offerId, Collectors.mapping(CodeRow::code, Collectors.joining(" "))));
    }

    Map<UUID, List<UUID>> channels(Collection<UUID> offers) {
        return offers.isEmpty()
                ? Map.of()
                : jdbc
                        .sql("select offer_id, channel_id from offer_channel where offer_id in (:ids)")
                        .param("ids", offers)
                        .query(ChannelRow.class)
                        .list()
                        .stream()
                        .collect(Collectors.groupingBy(
                                ChannelRow::offerId, Collectors.mapping(ChannelRow::channelId, Collectors.toList())));
    }

    /** All the money in the pieces of each offer. */
    Map<UUID, Amount> landed(Collection<UUID> offers) {
        if (offers.isEmpty()) {
            return Map.of();
        }
        List<PieceRow> pieces = jdbc.sql("select offer_id, piece_id from offer_piece where offer_id in (:ids)")
                .param("ids", offers)
                .query(PieceRow.class)
                .list();
        Map<UUID, Long> costs = jdbc
                .sql("select piece_id, landed_minor from piece_figures where piece_id in (:ids)")
                .param("ids", pieces.stream().map(PieceRow::pieceId).distinct().toList())
                .query(CostRow.class)
                .list()
                .stream()
                .collect(Collectors.toMap(CostRow::pieceId, CostRow::landedMinor));
        return pieces.stream()
                .collect(Collectors.groupingBy(
                        PieceRow::offerId,
                        Collectors.mapping(row -> Amount.of(costs.getOrDefault(row.pieceId(), 0L)), Amount.sum())));
    }
}
