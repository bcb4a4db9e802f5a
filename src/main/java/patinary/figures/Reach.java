package patinary.figures;

import java.util.UUID;
import org.springframework.stereotype.Component;

/**
 * How far a change reaches: which pieces, sales and offers have other figures when documents change.
 *
 * <ul>
 *   <li>A document reaches the pieces, sales and supplies that it or its postings name, now or before it was changed.
 *   <li>A piece reaches the offers it is in, and these the other pieces in them: an offer is over with the first that sells.
 *   <li>A piece reaches its sales, because cost that comes late belongs to the last sale before it; and a sale reaches its pieces,
 *       over which it is shared.
 * </ul>
 */
@Component
class Reach {

    private final TouchedIds touched;

    Reach(TouchedIds touched) {
        this.touched = touched;
    }

    /** Before what is known of the touched documents is renewed. */
    void ofDocumentsBefore() {
        ofDocuments();
    }

    /** After that; with all that follows, up to the sales. */
    void ofDocumentsAfter() {
        ofDocuments();
        // A use that was waiting for its cost waits no more, or one waits now: nothing else need have changed for its
        // pieces.
        touched.add(Touched.PIECE, """
                select u.piece_id from uncosted_piece u
                where not exists (select 1 from piece_figures f where f.piece_id = u.piece_id and f.uncosted)
                union all
                select f.piece_id from piece_figures f
                where f.uncosted and not exists (select 1 from uncosted_piece u where u.piece_id = f.piece_id)""");
        touched.add(Touched.OFFER, """
                select op.offer_id from touched_piece t join offer_piece op on op.piece_id = t.piece_id
                union all
                select t.document_id from touched_document t join offer_state o on o.offer_id = t.document_id""");
        touched.add(
                Touched.PIECE,
                "select op.piece_id from touched_offer t join offer_piece op on op.offer_id = t.offer_id");
        touched.add(Touched.SALE, """
                select t.document_id as sale_id from touched_document t join sale s on s.id = t.document_id
                union all
                select p.sale_id from touched_document t join sale_part p on p.sale_id = t.document_id
                union all
                select sp.sale_id from touched_piece t join sale_piece sp on sp.piece_id = t.piece_id""");
    }

    /** After what is known of the touched sales is renewed. */
    void ofSales() {
        touched.add(Touched.PIECE, """
                select sp.piece_id from touched_sale t join sale_part sp on sp.sale_id = t.sale_id
                where sp.piece_id is not null""");
    }

    /** The pieces that a supply was used on, or whose postings name it. */
    void ofSupply(UUID supply) {
        touched.add(Touched.PIECE, """
                select up.piece_id from bench_use bu
                join bench_use_piece up on up.bench_entry_id = bu.bench_entry_id and up.line = bu.line
                where bu.supply_id = ?
                union all
                select p.piece_id from posting p where p.supply_id = ? and p.piece_id is not null""", supply, supply);
    }

    private void ofDocuments() {
        touched.add(
                Touched.PIECE,
                "select d.piece_id from touched_document t join document_piece d on d.document_id = t.document_id");
        touched.add(
                Touched.SALE,
                "select d.sale_id from touched_document t join document_sale d on d.document_id = t.document_id");
        touched.add(
                Touched.SUPPLY,
                "select d.supply_id from touched_document t join document_stock d on d.document_id = t.document_id");
    }
}
