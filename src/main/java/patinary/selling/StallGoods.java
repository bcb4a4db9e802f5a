package patinary.selling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What can be handed over at the stall now, what is on offer first and the latest of it foremost. */
@Component
@Transactional(readOnly = true)
class StallGoods {

    private record Row(
            @Nullable UUID offerId, String title, @Nullable Long priceMinor, UUID pieceId, String code) {}

    private static final String OFFERED = """
            select os.offer_id, o.title, os.price_minor, p.id as piece_id, p.code
            from offer_state os
            left join offer o on o.id = os.offer_id
            left join offer_piece op on op.offer_id = os.offer_id
            left join piece p on p.id = op.piece_id
            where os.state = 'LIVE'
            order by os.started_on desc, o.title, min(p.code) over (partition by os.offer_id), os.offer_id, p.code""";

    private static final String READY = """
            select cast(null as uuid) as offer_id, p.title, cast(null as bigint) as price_minor, p.id as piece_id, p.code
            from piece p
            join piece_state s on s.piece_id = p.id
            where s.state = 'READY'
            order by s.since desc, p.code""";

    private static final String PIECE = """
            select cast(null as uuid) as offer_id, p.title, cast(null as bigint) as price_minor, p.id as piece_id, p.code
            from piece p
            where p.id = :id or upper(p.code) = upper(:code)""";

    private static final String SOLD = """
            select sp.sale_id, d.doc_date, p.code, sl.price_minor - sl.discount_minor as price_minor
            from sale_piece sp
            join document d on d.id = sp.sale_id
            join piece p on p.id = sp.piece_id
            join sale_line sl on sl.sale_id = sp.sale_id and sl.line = sp.line
            where upper(p.code) in (:codes) and sp.sale_id <> :own
            order by d.doc_date desc, p.code
            fetch next 1 rows only""";

    private final JdbcClient jdbc;

    StallGoods(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Ware> all() {
        Map<UUID, Ware> wares = new LinkedHashMap<>();
        jdbc.sql(OFFERED).query(Row.class).list().forEach(row -> add(wares, row));
        jdbc.sql(READY).query(Row.class).list().forEach(row -> add(wares, row));
        return List.copyOf(wares.values());
    }

    /** The offer that a piece is on, or the piece by itself, whatever state it is in. */
    Optional<Ware> withPiece(UUID piece) {
        return all().stream().filter(ware -> ware.has(piece)).findFirst().or(() -> alone(piece, ""));
    }

    Optional<Ware> ofOffer(UUID offer) {
        return all().stream().filter(ware -> offer.equals(ware.offer())).findFirst();
    }

    Optional<Ware> withCode(String code) {
        return all().stream()
                .filter(ware -> ware.codes().stream().anyMatch(code.strip()::equalsIgnoreCase))
                .findFirst()
                .or(() -> alone(new UUID(0, 0), code.strip()));
    }

    /** The latest other sale of one of the pieces with these codes. */
    Optional<SoldAlready> soldAlready(String codes, UUID own) {
        List<String> each = PieceFinder.codes(codes);
        if (each.isEmpty()) {
            return Optional.empty();
        }
        return jdbc.sql(SOLD)
                .param("codes", each)
                .param("own", own)
                .query(SoldAlready.class)
                .optional();
    }

    private Optional<Ware> alone(UUID id, String code) {
        return jdbc.sql(PIECE).param("id", id).param("code", code).query(Row.class).list().stream()
                .map(StallGoods::ware)
                .findFirst();
    }

    private static void add(Map<UUID, Ware> wares, Row row) {
        UUID key = row.offerId() == null ? row.pieceId() : row.offerId();
        wares.merge(key, ware(row), StallGoods::together);
    }

    private static Ware ware(Row row) {
        return new Ware(row.offerId(), row.title(), List.of(row.code()), List.of(row.pieceId()), row.priceMinor());
    }

    private static Ware together(Ware one, Ware other) {
        return new Ware(
                one.offer(),
                one.title(),
                joined(one.codes(), other.codes()),
                joined(one.pieces(), other.pieces()),
                one.priceMinor());
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }
}
