package patinary.packing;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.places.PlacedPiece;
import patinary.places.Places;

/**
 * What is on a list and where it stands. Each step may be sent twice, as a thumb on a slow connection does, and does
 * its work once.
 */
@Service
class Packing {

    private final JdbcClient jdbc;
    private final Places places;

    Packing(JdbcClient jdbc, Places places) {
        this.jdbc = jdbc;
        this.places = places;
    }

    /** Those still to be packed stand together by the place they are fetched from. */
    @Transactional(readOnly = true)
    public List<PackedPiece> of(UUID list) {
        return jdbc.sql("""
                        select p.id, p.code, p.title, s.state, k.packed, k.home, s.price_minor,
                               case when k.packed then k.place_before else p.place end as place,
                               case when s.state = 'SOLD' and not k.home then
                                   (select sum(t.price_minor) from sale_part t
                                    where t.sale_id = s.sale_id and t.piece_id = p.id) end as sold_minor
                        from packing_piece k
                        join piece p on p.id = k.piece_id
                        join piece_state s on s.piece_id = p.id
                        where k.packing_list_id = ?
                        order by lower(case when k.packed then k.place_before else p.place end), p.code""").param(list).query(PackedPiece.class).list();
    }

    /** What is on offer and not on the list; an empty place stands for all. */
    @Transactional(readOnly = true)
    public List<PlacedPiece> toAdd(UUID list, String place) {
        return jdbc.sql("""
                        select p.id, p.code, p.title, p.place, s.state, s.price_minor, s.offer_id, s.sale_id
                        from piece p join piece_state s on s.piece_id = p.id
                        where s.state = 'OFFERED' and (:place = '' or p.place = :place)
                          and not exists (select 1 from packing_piece k
                                          where k.packing_list_id = :list and k.piece_id = p.id)
                        order by lower(p.place), p.code fetch first 300 rows only""")
                .param("list", list)
                .param("place", place)
                .query(PlacedPiece.class)
                .list();
    }

    /** Puts pieces on the list; those that are there stay as they are. */
    @Transactional
    public int add(UUID list, Collection<UUID> pieces) {
        return pieces.isEmpty()
                ? 0
                : jdbc.sql("""
                        insert into packing_piece (packing_list_id, piece_id, packed, home, place_before)
                        select l.id, p.id, false, false, '' from piece p cross join packing_list l
                        where l.id = :list and p.id in (:pieces)
                          and not exists (select 1 from packing_piece k
                                          where k.packing_list_id = l.id and k.piece_id = p.id)""").param("list", list).param("pieces", pieces).update();
    }

    /** Takes a piece off the list that is not packed. */
    @Transactional
    public void leave(UUID list, UUID piece) {
        jdbc.sql("delete from packing_piece where packing_list_id = ? and piece_id = ? and not packed")
                .params(list, piece)
                .update();
    }

    /** It is in the box: from now on its place is the market, and where it was is remembered. */
    @Transactional
    public void pack(UUID list, UUID piece, String market) {
        int packed = jdbc.sql("""
                        update packing_piece set packed = true,
                            place_before = (select p.place from piece p where p.id = packing_piece.piece_id)
                        where packing_list_id = ? and piece_id = ? and not packed""").params(list, piece).update();
        if (packed > 0) {
            places.move(Set.of(piece), market);
        }
    }

    /** Out of the box again, back to where it was. */
    @Transactional
    public void unpack(UUID list, UUID piece) {
        String before = before(list, piece);
        int changed = jdbc.sql("""
                        update packing_piece set packed = false, home = false, place_before = ''
                        where packing_list_id = ? and piece_id = ? and packed and not home""").params(list, piece).update();
        if (changed > 0) {
            places.move(Set.of(piece), before);
        }
    }

    /** It came back unsold, to where it was before it was packed. */
    @Transactional
    public void home(UUID list, UUID piece) {
        int changed = jdbc.sql("update packing_piece set home = true"
                        + " where packing_list_id = ? and piece_id = ? and packed and not home")
                .params(list, piece)
                .update();
        if (changed > 0) {
            places.move(Set.of(piece), before(list, piece));
        }
    }

    /** A slip of the thumb: it is not back. */
    @Transactional
    public void notHome(UUID list, UUID piece, String market) {
        int changed = jdbc.sql(
                        "update packing_piece set home = false where packing_list_id = ? and piece_id = ? and home")
                .params(list, piece)
                .update();
        if (changed > 0) {
            places.move(Set.of(piece), market);
        }
    }

    private String before(UUID list, UUID piece) {
        return jdbc.sql("select place_before from packing_piece where packing_list_id = ? and piece_id = ?")
                .params(list, piece)
                .query(String.class)
                .optional()
                .orElse("");
    }
}
