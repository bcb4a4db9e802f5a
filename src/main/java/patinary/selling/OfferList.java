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
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.lists.ListTotals;
import patinary.lists.Where;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** The offers as lists and pages read them. */
@Repository
@Transactional(readOnly = true)
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

    private static final String WORDS = """
            (%s or exists (
                select 1 from offer_piece op join piece p on p.id = op.piece_id
                where op.offer_id = os.offer_id and %s))""".formatted(Words.in("o.title"), Words.in("p.code", "p.title"));

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
            boolean doubled) {}

    /** The code of a piece that an offer has, or a pause of it. */
    private record Detail(
            UUID offerId,
            @Nullable String code,
            @Nullable LocalDate pausedFrom,
            @Nullable LocalDate pausedTo) {}

    /** Where an offer stands today. */
    private static final String STATE = """
            case when os.state = 'LIVE' and exists (
                select 1 from offer_pause pa
                where pa.offer_id = os.offer_id and pa.paused_from <= :today
                  and (pa.paused_to is null or pa.paused_to >= :today)) then 'PAUSED'
            else os.state end""";

    private static final String OFFERS = " from offer_state os join offer o on o.id = os.offer_id";

    /** Of those that are alike and stand alike the latest, and how many it stands for. */
    private static final String GROUPS = """
            select g.offer_id, g.alike
            from (select os.offer_id,
                         row_number() over (partition by o.alike_id, %1$s order by os.started_on desc, os.offer_id) as nth,
                         count(*) over (partition by o.alike_id, %1$s) as alike
                  %2$s%3$s) g
            where g.nth = 1""";

    /** What is shown of some; doubled where it is live and another live one has a piece of it too. */
    private static final String SHOWN = """
            select os.offer_id, o.title, %1$s as state, os.started_on, os.ended_on, os.first_price_minor, os.price_minor,
                   os.state = 'LIVE' and exists (
                       select 1 from offer_piece mine
                       join offer_piece theirs on theirs.piece_id = mine.piece_id and theirs.offer_id <> mine.offer_id
                       join offer_state other on other.offer_id = theirs.offer_id
                       where mine.offer_id = os.offer_id and other.state = 'LIVE') as doubled
            from (select os.offer_id as id %2$s) shown
            join offer_state os on os.offer_id = shown.id
            join offer o on o.id = os.offer_id
            order by %3$s""";

    private static final String LATEST = "os.started_on desc, o.title, os.offer_id";

    private record Group(UUID offerId, long alike) {}

    private final JdbcClient jdbc;
    private final CurrentShop shop;
    private final ListTotals totals;

    OfferList(JdbcClient jdbc, CurrentShop shop, ListTotals totals) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.totals = totals;
    }

    Page<Row> page(Search search, Window window) {
        Where where = where(search);
        // Most have none alike. They come in the order of an index, so that the page ends where it is full; the groups
        // are few.
        String groups = GROUPS.formatted(STATE, OFFERS, where.sql("o.alike_id is not null"));
        Map<UUID, Long> alike = jdbc.sql(groups).params(where.values()).query(Group.class).list().stream()
                .collect(Collectors.toMap(Group::offerId, Group::alike));
        Where folded = where.and("(o.alike_id is null or os.offer_id in (:folded))")
                .with("folded", Ids.orNone(alike.keySet()));
        String found = OFFERS + folded.sql();
        long total = totals.of("select count(*)" + found, folded.values(), Long.class);
        folded.with("size", window.size()).with("offset", window.offset());
        String page =
                found + " order by os.started_on desc, os.offer_id offset :offset rows fetch next :size rows only";
        return Page.of(window, rows(page, LATEST, folded, alike), total);
    }

    /** One offer, or nothing. */
    List<Row> find(UUID id) {
        return each(new Where().and("os.offer_id = :id", "id", id), LATEST);
    }

    /** The others of an offer's group, sold ones too. */
    List<Row> alike(UUID id) {
        Where where = new Where()
                .and("o.alike_id = (select alike_id from offer where id = :id) and os.offer_id <> :id", "id", id);
        return each(where, "os.started_on").stream()
                .sorted(Comparator.comparing(Row::startedOn)
                        .thenComparing(Row::codes, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    /** The other live offers that have a piece in common with one. */
    List<Row> beside(UUID id) {
        Where where = new Where()
                .and("os.state = 'LIVE' and os.offer_id <> :id")
                .and(
                        "exists (select 1 from offer_piece a join offer_piece b on b.piece_id = a.piece_id"
                                + " where a.offer_id = os.offer_id and b.offer_id = :id)",
                        "id",
                        id);
        return each(where, "o.title");
    }

    /** What can be sold from an offer now and fits the words, to choose from: so many, and one more where there are more. */
    List<Open> open(String words) {
        Where where = new Where().and("os.state = 'LIVE'").words(WORDS, words);
        Map<UUID, Open> open = new LinkedHashMap<>();
        jdbc.sql("""
                        select o.offer_id, o.title, o.price_minor, p.code as codes
                        from (select os.offer_id, o.title, os.price_minor
                              from offer_state os
                              left join offer o on o.id = os.offer_id
                              %s
                              order by o.title, os.offer_id
                              fetch next %d rows only) o
                        left join offer_piece op on op.offer_id = o.offer_id
                        left join piece p on p.id = op.piece_id
                        order by o.title, o.offer_id, p.code""".formatted(where.sql(), Choosable.MOST + 1))
                .params(where.values())
                .query(Open.class)
                .list()
                .forEach(row -> open.merge(row.offerId(), row, Open::and));
        return List.copyOf(open.values());
    }

    private Where where(Search search) {
        Where where = new Where().with("today", shop.today());
        where.words(WORDS, search.words());
        where.id(
                        search.channel(),
                        "exists (select 1 from offer_channel oc where oc.offer_id = os.offer_id and oc.channel_id = :channel)",
                        "channel")
                .id(
                        search.style(),
                        "exists (select 1 from offer_piece op join piece p on p.id = op.piece_id"
                                + " where op.offer_id = os.offer_id and p.style_id = :style)",
                        "style");
        if (!search.state().isBlank()) {
            where.and(STATE + " = :state", "state", search.state());
        }
        return where;
    }

    /** Every offer as a row of its own. */
    private List<Row> each(Where where, String order) {
        return rows(OFFERS + where.with("today", shop.today()).sql(), order, where, Map.of());
    }

    /** @param alike how many stand behind a row, where they are more than itself */
    private List<Row> rows(String found, String order, Where where, Map<UUID, Long> alike) {
        List<Stored> stored = jdbc.sql(SHOWN.formatted(STATE, found, order))
                .params(where.values())
                .query(Stored.class)
                .list();
        Map<UUID, List<Detail>> details =
                details(stored.stream().map(Stored::offerId).toList());
        return stored.stream()
                .map(row -> complete(
                        row, details.getOrDefault(row.offerId(), List.of()), alike.getOrDefault(row.offerId(), 1L)))
                .toList();
    }

    private Row complete(Stored row, List<Detail> details, long alike) {
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
                alike);
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
