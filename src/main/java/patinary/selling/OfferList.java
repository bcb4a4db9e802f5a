package patinary.selling;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.Page;
import patinary.web.Window;

/** The offers as lists and pages read them. */
@Component
class OfferList {

    /** What a list of offers may be narrowed by; empty texts ask for everything. */
    record Search(String words, String channel, String style, String state) {}

    /**
     * An offer in a list.
     *
     * @param alike how many of a group the row stands for, itself counted; 1 where it stands for itself
     */
    record Row(
            UUID offerId,
            String title,
            String state,
            LocalDate startedOn,
            @Nullable LocalDate endedOn,
            long firstPriceMinor,
            long priceMinor,
            boolean doubled,
            @Nullable String codes,
            long days,
            long alike) {}

    /** An offer to choose from, paused or not. */
    record Open(
            UUID offerId,
            String title,
            long priceMinor,
            @Nullable String codes) {

        private Open and(Open next) {
            return new Open(offerId, title, priceMinor, codes + " " + next.codes());
        }
    }

    private record Stored(
            UUID offerId,
            String title,
            String state,
            LocalDate startedOn,
            @Nullable LocalDate endedOn,
            long firstPriceMinor,
            long priceMinor,
            boolean doubled,
            long alike) {}

    /** The code of a piece that an offer has, or a pause of it. */
    private record Detail(
            UUID offerId,
            @Nullable String code,
            @Nullable LocalDate pausedFrom,
            @Nullable LocalDate pausedTo) {}

    /** Every offer; doubled where it is live and another live one has a piece of it too. */
    private static final String OFFERS = """
            from (select os.offer_id, o.title, o.alike_id, os.started_on, os.ended_on, os.first_price_minor, os.price_minor,
                         case when os.state = 'LIVE' and exists (
                             select 1 from offer_pause pa
                             where pa.offer_id = os.offer_id and pa.paused_from <= :today
                               and (pa.paused_to is null or pa.paused_to >= :today)) then 'PAUSED'
                         else os.state end as state,
                         os.state = 'LIVE' and os.offer_id in (
                             select op.offer_id
                             from (select lp.piece_id
                                   from offer_state ls
                                   left join offer_piece lp on lp.offer_id = ls.offer_id
                                   where ls.state = 'LIVE'
                                   group by lp.piece_id
                                   having count(*) > 1) twice
                             join offer_piece op on op.piece_id = twice.piece_id) as doubled
                  from offer_state os
                  left join offer o on o.id = os.offer_id) r""";

    /** One row for all of a group that stand alike, the latest of them. */
    private static final String FOLDED = """
            from (select r.*,
                         row_number() over (partition by coalesce(r.alike_id, r.offer_id), r.state
                                            order by r.started_on desc, r.offer_id) as nth,
                         count(*) over (partition by coalesce(r.alike_id, r.offer_id), r.state) as alike
                  %s) r
            where r.nth = 1""";

    private final JdbcClient jdbc;
    private final CurrentShop shop;

    OfferList(JdbcClient jdbc, CurrentShop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
    }

    Page<Row> page(Search search, Window window) {
        Where where = where(search);
        String folded = FOLDED.formatted(OFFERS + where.sql());
        long total = jdbc.sql("select count(*) " + folded)
                .params(where.values())
                .query(Long.class)
                .single();
        where.with("size", window.size()).with("offset", window.offset());
        return Page.of(
                window,
                rows(
                        "select r.* " + folded
                                + " order by r.started_on desc, r.title, r.offer_id"
                                + " offset :offset rows fetch next :size rows only",
                        where),
                total);
    }

    /** One offer, or nothing. */
    List<Row> find(UUID id) {
        return each(new Where().with("today", shop.today()).and("r.offer_id = :id", "id", id), "");
    }

    /** The others of an offer's group, sold ones too. */
    List<Row> alike(UUID id) {
        Where where = new Where()
                .with("today", shop.today())
                .and("r.alike_id = (select alike_id from offer where id = :id) and r.offer_id <> :id", "id", id);
        return each(where, " order by r.started_on").stream()
                .sorted(Comparator.comparing(Row::startedOn)
                        .thenComparing(Row::codes, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    /** The other live offers that have a piece in common with one. */
    List<Row> beside(UUID id) {
        Where where = new Where()
                .with("today", shop.today())
                .and("r.state in ('LIVE', 'PAUSED') and r.offer_id <> :id")
                .and(
                        "exists (select 1 from offer_piece a join offer_piece b on b.piece_id = a.piece_id"
                                + " where a.offer_id = r.offer_id and b.offer_id = :id)",
                        "id",
                        id);
        return each(where, " order by r.title");
    }

    /** Everything that can be sold from an offer now, to choose from. */
    List<Open> open() {
        Map<UUID, Open> open = new LinkedHashMap<>();
        jdbc.sql("""
                        select o.offer_id, o.title, o.price_minor, p.code as codes
                        from (select os.offer_id, f.title, os.price_minor
                              from offer_state os
                              left join offer f on f.id = os.offer_id
                              where os.state = 'LIVE'
                              order by f.title, os.offer_id
                              fetch next 200 rows only) o
                        left join offer_piece op on op.offer_id = o.offer_id
                        left join piece p on p.id = op.piece_id
                        order by o.title, o.offer_id, p.code""").query(Open.class).list().forEach(row -> open.merge(row.offerId(), row, Open::and));
        return List.copyOf(open.values());
    }

    private Where where(Search search) {
        Where where = new Where().with("today", shop.today());
        where.words("""
                (lower(r.title) like :words escape '!' or exists (
                    select 1 from offer_piece op join piece p on p.id = op.piece_id
                    where op.offer_id = r.offer_id
                      and (lower(p.code) like :words escape '!' or lower(p.title) like :words escape '!')))""", search.words());
        Ids.read(search.channel())
                .ifPresent(id -> where.and(
                        "exists (select 1 from offer_channel oc where oc.offer_id = r.offer_id and oc.channel_id = :channel)",
                        "channel",
                        id));
        Ids.read(search.style())
                .ifPresent(id -> where.and(
                        "exists (select 1 from offer_piece op join piece p on p.id = op.piece_id"
                                + " where op.offer_id = r.offer_id and p.style_id = :style)",
                        "style",
                        id));
        if (!search.state().isBlank()) {
            where.and("r.state = :state", "state", search.state());
        }
        return where;
    }

    /** Every offer as a row of its own. */
    private List<Row> each(Where where, String order) {
        return rows("select r.*, 1 as alike " + OFFERS + where.sql() + order, where);
    }

    private List<Row> rows(String sql, Where where) {
        List<Stored> stored =
                jdbc.sql(sql).params(where.values()).query(Stored.class).list();
        Map<UUID, List<Detail>> details =
                details(stored.stream().map(Stored::offerId).toList());
        return stored.stream()
                .map(row -> complete(row, details.getOrDefault(row.offerId(), List.of())))
                .toList();
    }

    private Row complete(Stored row, List<Detail> details) {
        List<Offer.Pause> pauses = details.stream()
                .flatMap(detail ->
                        Optional.ofNullable(detail.pausedFrom())
                                .map(from -> new Offer.Pause(from, detail.pausedTo()))
                                .stream())
                .toList();
        String codes =
                details.stream().map(Detail::code).filter(Objects::nonNull).collect(Collectors.joining(" "));
        LocalDate to = row.endedOn() == null ? shop.today() : row.endedOn();
        return new Row(
                row.offerId(),
                row.title(),
                row.state(),
                row.startedOn(),
                row.endedOn(),
                row.firstPriceMinor(),
                row.priceMinor(),
                row.doubled(),
                codes.isEmpty() ? null : codes,
                DaysOnOffer.count(row.startedOn(), to, pauses),
                row.alike());
    }

    private Map<UUID, List<Detail>> details(List<UUID> ids) {
        if (ids.isEmpty()) {
            return Map.of();
        }
        return jdbc.sql("""
                        select op.offer_id, p.code, cast(null as date) as paused_from, cast(null as date) as paused_to
                        from offer_piece op
                        join piece p on p.id = op.piece_id
                        where op.offer_id in (:ids)
                        union all
                        select offer_id, null, paused_from, paused_to from offer_pause where offer_id in (:ids)
                        order by 2, 3""").param("ids", ids).query(Detail.class).list().stream()
                .collect(Collectors.groupingBy(Detail::offerId));
    }
}
