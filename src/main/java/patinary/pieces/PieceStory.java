package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.NotFound;

/** What happened to a piece, told from the documents that name it. */
@Repository
class PieceStory {

    /**
     * The names of its kind, its style, the finish it waits for and where it was bought.
     *
     * @param usualArea the usual surface of its kind, in square centimetres
     */
    record Names(
            @Nullable String kind,
            @Nullable BigDecimal usualArea,
            @Nullable String style,
            @Nullable String finish,
            @Nullable String source,
            @Nullable String owner,
            boolean commission) {}

    /**
     * A document that names the piece.
     *
     * @param reason why it left, where the document says that it left without a sale
     */
    record Event(UUID documentId, String kind, LocalDate date, String note, LettingGo.@Nullable Reason reason) {

        public String path() {
            return DocumentPath.of(kind, documentId);
        }

        /** Whether the document has a page of its own to go to. */
        public boolean isLinked() {
            return !path().equals("/pieces");
        }
    }

    private static final String EVENTS = """
            select distinct d.id as document_id, d.kind, d.doc_date as date, d.kind_rank, d.note, g.reason
            from (select receipt_id as id from receipt_piece where piece_id = :piece
                  union all select opening_id from opening_piece where piece_id = :piece
                  union all select supplier_return_id from supplier_return_piece where piece_id = :piece
                  union all select bench_entry_id from bench_piece where piece_id = :piece
                  union all select regrouping_id from regrouping_from where piece_id = :piece
                  union all select regrouping_id from regrouping_to where piece_id = :piece
                  union all select offer_id from offer_piece where piece_id = :piece
                  union all select sale_id from sale_piece where piece_id = :piece
                  union all select sale_id from sale_undelivered where piece_id = :piece
                  union all select refund_id from refund_line where piece_id = :piece
                  union all select id from letting_go where piece_id = :piece) e
            join document d on d.id = e.id
            left join letting_go g on g.id = d.id
            order by d.doc_date desc, d.kind_rank desc, d.id""";

    private final JdbcClient jdbc;

    PieceStory(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Names names(UUID piece) {
        return jdbc.sql("""
                        select k.name as kind, k.area_cm2 as usual_area, y.name as style, f.name as finish,
                               (select min(s.name) from receipt_piece rp
                                join receipt r on r.id = rp.receipt_id
                                join source s on s.id = r.source_id
                                where rp.piece_id = p.id) as source,
                               po.owner, coalesce(po.arrangement = 'COMMISSION', false) as commission
                        from piece p
                        left join object_kind k on k.id = p.kind_id
                        left join style y on y.id = p.style_id
                        left join finish f on f.id = p.planned_finish_id
                        left join piece_owner po on po.piece_id = p.id
                        where p.id = ?""")
                .param(piece)
                .query(Names.class)
                .optional()
                .orElseThrow(() -> new NotFound("piece " + piece));
    }

    List<Event> events(UUID piece) {
        return jdbc.sql(EVENTS).param("piece", piece).query(Event.class).list();
    }

    /** That of the events by which the piece left without a sale. */
    static Optional<Event> gone(List<Event> events) {
        return events.stream().filter(event -> event.reason() != null).findFirst();
    }
}
