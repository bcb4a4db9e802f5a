package patinary.asking;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.selling.DaysOnOffer;
import patinary.selling.Offer;
import patinary.shop.CurrentShop;
import patinary.web.Ids;

/** Reads the offers of things of the same kind or style. */
@Repository
@Transactional(readOnly = true)
class PastOffers {

    /** A database need not have an order of ids; of their texts it has one. */
    private static final String LIKE = """
            select op.offer_id, count(*) as things,
                   case when count(p.kind_id) = count(*) and count(distinct p.kind_id) = 1
                        then min(cast(p.kind_id as varchar(36))) end as kind,
                   case when count(p.style_id) = count(*) and count(distinct p.style_id) = 1
                        then min(cast(p.style_id as varchar(36))) end as style
            from offer_piece op
            join piece p on p.id = op.piece_id
            where op.piece_id not in (select po.piece_id from piece_owner po)
            group by op.offer_id""";

    /** The first day on which a withdrawn offer no longer was is the day after its last. */
    private static final String OFFERS = """
            select os.offer_id, o.title, os.state, os.started_on,
                   case when os.state = 'ENDED' then coalesce(o.ended_on + 1, os.ended_on) else os.ended_on end as until_day,
                   os.first_price_minor, os.price_minor
            from offer_state os
            left join offer o on o.id = os.offer_id""";

    private record LikeRow(
            UUID offerId,
            long things,
            @Nullable String kind,
            @Nullable String style) {}

    private record OfferRow(
            UUID offerId,
            String title,
            String state,
            LocalDate startedOn,
            @Nullable LocalDate untilDay,
            long firstPriceMinor,
            long priceMinor) {}

    /** An offer of the past, and of how many things it was. */
    private record Past(PastOffer offer, long things) {}

    private record Asking(LocalDate today) {}

    private final JdbcClient jdbc;
    private final Readings readings;
    private final OfferPauses pauses;
    private final CurrentShop shop;

    PastOffers(JdbcClient jdbc, Readings readings, OfferPauses pauses, CurrentShop shop) {
        this.jdbc = jdbc;
        this.readings = readings;
        this.pauses = pauses;
        this.shop = shop;
    }

    /**
     * All offers of single things, or of sets, but those of the pieces themselves, the latest first.
     *
     * @param own the pieces for which a price is sought; at least one
     */
    List<PastOffer> of(Collection<UUID> own) {
        boolean set = own.size() > 1;
        Set<UUID> theirs = Set.copyOf(jdbc.sql("select distinct offer_id from offer_piece where piece_id in (:own)")
                .param("own", own)
                .query(UUID.class)
                .list());
        return readings.ahead(new Asking(shop.today()), this::read).stream()
                .filter(past -> past.things() > 1 == set)
                .map(Past::offer)
                .filter(offer -> !theirs.contains(offer.offerId()))
                .toList();
    }

    private List<Past> read() {
        Map<UUID, LikeRow> like = jdbc.sql(LIKE).query(LikeRow.class).list().stream()
                .collect(Collectors.toMap(LikeRow::offerId, Function.identity()));
        Map<UUID, List<Offer.Pause>> paused = pauses.all();
        return jdbc.sql(OFFERS + " order by os.started_on desc, os.offer_id").query(OfferRow.class).list().stream()
                .filter(row -> like.containsKey(row.offerId()))
                .map(row -> new Past(
                        past(row, like.get(row.offerId()), paused.getOrDefault(row.offerId(), List.of())),
                        like.get(row.offerId()).things()))
                .toList();
    }

    private PastOffer past(OfferRow row, LikeRow like, List<Offer.Pause> paused) {
        LocalDate until = row.untilDay() == null ? shop.today() : row.untilDay();
        return new PastOffer(
                row.offerId(),
                row.title(),
                row.state(),
                row.startedOn(),
                DaysOnOffer.count(row.startedOn(), until, paused),
                row.firstPriceMinor(),
                row.priceMinor(),
                Ids.read(like.kind()).orElse(null),
                Ids.read(like.style()).orElse(null));
    }
}
