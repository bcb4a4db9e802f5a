package patinary.covering;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.ledger.Trail;
import patinary.shop.CurrentShop;

/** What payouts are said to cover: read, kept, and taken back. */
@Service
@Transactional
public class CoverBook {

    /** A balance of a channel. */
    record Place(UUID id, String name, long amountMinor) {}

    private record Balance(UUID place) {}

    private record Row(
            UUID payoutId,
            UUID documentId,
            LocalDate docDate,
            String kind,
            @Nullable UUID saleId,
            String buyer,
            String orderReference,
            long amountMinor,
            long saidMinor) {

        Part part() {
            Movement movement = new Movement(documentId, docDate, kind, saleId, buyer, orderReference, amountMinor);
            return new Part(payoutId, movement, saidMinor);
        }
    }

    private static final String WHO = """
            coalesce(s.id, b.id, y.sale_id) as sale_id,
                   coalesce(s.buyer, b.buyer, y.buyer, '') as buyer,
                   coalesce(s.order_reference, b.order_reference, '') as order_reference
            """;

    private static final String OF = """
            left join sale s on s.id = m.document_id
            left join refund r on r.id = m.document_id
            left join sale b on b.id = r.sale_id
            left join payment y on y.id = m.document_id
            """;

    private static final String PAYOUT = """
            select o.id, d.doc_date, o.from_place_id as place_id, f.name as place, t.name as to_place,
                   o.amount_minor, o.fee_minor, c.said_on, c.total_minor
            from payout o
            join document d on d.id = o.id
            join money_place f on f.id = o.from_place_id
            join money_place t on t.id = o.to_place_id
            left join payout_cover c on c.payout_id = o.id
            """;

    private final JdbcClient jdbc;
    private final Readings readings;
    private final CurrentShop shop;
    private final Trail trail;

    CoverBook(JdbcClient jdbc, Readings readings, CurrentShop shop, Trail trail) {
        this.jdbc = jdbc;
        this.readings = readings;
        this.shop = shop;
        this.trail = trail;
    }

    /** How each of some payouts stands, as the end of a message key; for lists of payouts. */
    @Transactional(readOnly = true)
    public Map<UUID, String> standing(Collection<UUID> payouts) {
        if (payouts.isEmpty()) {
            return Map.of();
        }
        Map<UUID, List<Part>> parts = parts("pp.payout_id in (:ids)", Map.of("ids", payouts)).stream()
                .collect(Collectors.groupingBy(Part::payoutId));
        return jdbc.sql(PAYOUT + " where o.id in (:ids)").param("ids", payouts).query(PayoutFacts.class).list().stream()
                .map(payout -> new Cover(payout, parts.getOrDefault(payout.id(), List.of())))
                .collect(Collectors.toMap(
                        cover -> cover.payout().id(), cover -> cover.state().key()));
    }

    /** The payouts dated between two days. */
    @Transactional(readOnly = true)
    List<Cover> between(LocalDate first, LocalDate last) {
        Map<UUID, List<Part>> parts = parts(
                        "pp.payout_id in (select d2.id from document d2 where d2.doc_date between :first and :last)",
                        Map.of("first", first, "last", last))
                .stream()
                .collect(Collectors.groupingBy(Part::payoutId));
        return jdbc
                .sql(PAYOUT + " where d.doc_date between ? and ? order by d.doc_date, o.id")
                .params(first, last)
                .query(PayoutFacts.class)
                .list()
                .stream()
                .map(payout -> new Cover(payout, parts.getOrDefault(payout.id(), List.of())))
                .toList();
    }

    @Transactional(readOnly = true)
    Optional<Cover> find(UUID payout) {
        return jdbc.sql(PAYOUT + " where o.id = ?")
                .param(payout)
                .query(PayoutFacts.class)
                .optional()
                .map(facts -> new Cover(facts, parts("pp.payout_id = :payout", Map.of("payout", payout))));
    }

    /** The balances of channels, and what each holds. */
    @Transactional(readOnly = true)
    List<Place> places() {
        return jdbc.sql("""
                        select m.id, m.name, coalesce(l.amount_minor, 0) as amount_minor
                        from money_place m
                        left join money_left l on l.place_id = m.id
                        where m.kind = 'CHANNEL'
                        order by lower(m.name), m.id""").query(Place.class).list();
    }

    /** Goes through all that ever moved on a balance, so it is read once until something changes. */
    @Transactional(readOnly = true)
    BalanceCover of(UUID place) {
        return readings.ahead(new Balance(place), () -> read(place));
    }

    private BalanceCover read(UUID place) {
        return BalanceCover.of(
                movements(place),
                jdbc.sql(PAYOUT + " where o.from_place_id = ? order by d.doc_date desc, o.id")
                        .param(place)
                        .query(PayoutFacts.class)
                        .list(),
                parts("pp.place_id = :place", Map.of("place", place)));
    }

    /** What a payout may cover: of its balance, up to its day, and covered by no other. */
    @Transactional(readOnly = true)
    List<Movement> open(PayoutFacts payout) {
        return of(payout.placeId()).open().stream()
                .filter(movement -> !movement.docDate().isAfter(payout.docDate()))
                .toList();
    }

    /**
     * Says what a payout covers, in place of what was said before.
     *
     * @return whether all of it may be: of that balance, not later, and covered by no other payout
     */
    boolean say(UUID id, Collection<UUID> documents) {
        trail.thing("payout", id);
        jdbc.sql("delete from payout_cover where payout_id = ?").param(id).update();
        PayoutFacts payout = find(id).map(Cover::payout).orElseThrow();
        Map<UUID, Movement> open =
                open(payout).stream().collect(Collectors.toMap(Movement::documentId, Function.identity()));
        if (!open.keySet().containsAll(documents)) {
            return false;
        }
        List<Movement> said = documents.stream().distinct().map(open::get).toList();
        jdbc.sql("insert into payout_cover (payout_id, said_on, total_minor) values (?, ?, ?)")
                .params(id, shop.today(), Movement.sum(said).minor())
                .update();
        said.forEach(movement -> jdbc.sql(
                        "insert into payout_part (payout_id, document_id, place_id, amount_minor) values (?, ?, ?, ?)")
                .params(id, movement.documentId(), payout.placeId(), movement.amountMinor())
                .update());
        return true;
    }

    /** Takes back what was said of a payout. */
    void takeBack(UUID payout) {
        trail.thing("payout", payout);
        jdbc.sql("delete from payout_cover where payout_id = ?").param(payout).update();
    }

    private List<Movement> movements(UUID place) {
        return jdbc.sql("select m.document_id, m.doc_date, m.kind, " + WHO + ", m.amount_minor from place_movement m "
                        + OF
                        + " where m.place_id = ? order by m.doc_date, m.kind_rank, cast(m.document_id as varchar(36))")
                .param(place)
                .query(Movement.class)
                .list();
    }

    /** A part whose document no longer touches the balance is a movement of nothing. */
    private List<Part> parts(String which, Map<String, ?> parameters) {
        return jdbc
                .sql("select m.payout_id, m.document_id, m.doc_date, m.kind, " + WHO + ", m.amount_minor, m.said_minor"
                        + " from (select pp.payout_id, pp.document_id, d.doc_date, d.kind, d.kind_rank,"
                        + " pp.amount_minor as said_minor,"
                        + " (select cast(coalesce(sum(p.amount_minor), 0) as bigint) from posting p"
                        + " where p.document_id = pp.document_id and p.account = 'MONEY' and p.place_id = pp.place_id)"
                        + " as amount_minor"
                        + " from payout_part pp join document d on d.id = pp.document_id where " + which + ") m "
                        + OF + " order by m.doc_date, m.kind_rank, cast(m.document_id as varchar(36))")
                .params(parameters)
                .query(Row.class)
                .list()
                .stream()
                .map(Row::part)
                .toList();
    }
}
