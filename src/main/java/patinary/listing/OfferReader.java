package patinary.listing;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;

/** Reads what is known of an offer. */
@Repository
@Transactional(readOnly = true)
class OfferReader {

    /** An offer whose text can be written. */
    record Head(UUID id, String title, @Nullable Long priceMinor) {}

    private final JdbcClient jdbc;
    private final CurrentShop shop;

    OfferReader(JdbcClient jdbc, CurrentShop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
    }

    Optional<OfferFacts> find(UUID offer) {
        return jdbc.sql("""
                        select o.id, o.title,
                               (select p.price_minor from offer_price p
                                where p.offer_id = o.id and p.valid_from <= :today
                                order by p.valid_from desc fetch first 1 row only) as price_minor
                        from offer o where o.id = :offer""")
                .param("today", shop.today())
                .param("offer", offer)
                .query(Head.class)
                .optional()
                .map(head -> new OfferFacts(
                        offer,
                        head.title(),
                        head.priceMinor(),
                        pieces(offer),
                        names("""
                                select distinct f.name from finish f
                                join bench_entry e on e.finish_id = f.id
                                join bench_piece b on b.bench_entry_id = e.id
                                join offer_piece op on op.piece_id = b.piece_id
                                where op.offer_id = ? order by f.name""", offer),
                        supplies(offer),
                        names("""
                                select distinct t.tag as name from piece_tag t
                                join offer_piece op on op.piece_id = t.piece_id
                                where op.offer_id = ? order by t.tag""", offer)));
    }

    /** How many photos its pieces have. */
    long photos(UUID offer) {
        return jdbc.sql("select count(*) from photo h join offer_piece op on op.piece_id = h.piece_id"
                        + " where op.offer_id = ? and h.taken_away_at is null")
                .param(offer)
                .query(Long.class)
                .single();
    }

    private List<OfferFacts.Piece> pieces(UUID offer) {
        return jdbc.sql("""
                        select p.id, p.code, p.title, k.name as kind, s.name as style, p.material,
                               coalesce(z.size, '') as size, z.weight_g
                        from offer_piece op
                        join piece p on p.id = op.piece_id
                        left join object_kind k on k.id = p.kind_id
                        left join style s on s.id = p.style_id
                        left join piece_size z on z.piece_id = p.id
                        where op.offer_id = ? order by p.code""").param(offer).query(OfferFacts.Piece.class).list();
    }

    private List<OfferFacts.Used> supplies(UUID offer) {
        return jdbc.sql("""
                        select distinct u.id, l.id as line_id, u.name, l.name as line
                        from offer_piece op
                        join bench_use_piece bp on bp.piece_id = op.piece_id
                        join bench_use b on b.bench_entry_id = bp.bench_entry_id and b.line = bp.line
                        join supply u on u.id = b.supply_id
                        join supply_line l on l.id = u.supply_line_id
                        where op.offer_id = ? order by l.name, u.name""").param(offer).query(OfferFacts.Used.class).list();
    }

    private List<String> names(String sql, UUID offer) {
        return jdbc.sql(sql).param(offer).query(String.class).list();
    }
}
