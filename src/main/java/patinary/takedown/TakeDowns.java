package patinary.takedown;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;

/**
 * Which offers are over and may still stand somewhere: those that were sold on another channel, were withdrawn, or whose
 * piece is gone. The channel of the sale is left out, as it knows; so are those she has said she took it down from.
 */
@Repository
@Transactional
class TakeDowns {

    /** Offers that were over longer ago are shown when asked for; the first look at an old shop would be all history. */
    static final int RECENT = 60;

    /** So many of a channel are shown at once; the next come up as she says so of these. */
    static final int SHOWN = 50;

    /** Something she said today, which she may take back. */
    record Done(UUID offerId, UUID channelId, String title, String channel) {}

    /** A channel on which nothing is left standing. */
    record Unlisted(UUID channelId, String channel) {}

    private record Row(
            UUID channelId,
            String channel,
            UUID offerId,
            String title,
            boolean sold,
            LocalDate endedOn,
            @Nullable Long stillThere,
            long ofChannel) {

        Standing.Offer offer(LocalDate today) {
            return new Standing.Offer(
                    offerId,
                    title,
                    sold,
                    endedOn,
                    ChronoUnit.DAYS.between(endedOn, today),
                    stillThere == null ? 0 : stillThere);
        }
    }

    /** How many like it are on offer on the channel; asked for what is shown only. */
    private static final String STILL_THERE = """
            case when o.alike_id is not null then (
                select count(*)
                from offer lo
                join offer_state ls on ls.offer_id = lo.id
                join offer_channel lc on lc.offer_id = lo.id
                where lo.alike_id = o.alike_id and ls.state = 'LIVE' and lc.channel_id = r.channel_id) end""";

    private static final String STANDING = """
            from offer_state os
            left join offer o on o.id = os.offer_id
            left join offer_channel oc on oc.offer_id = os.offer_id
            left join channel c on c.id = oc.channel_id
            where c.id is not null and os.state <> 'LIVE' and os.ended_on >= :since
              and not exists (select 1 from channel_unlisted cu where cu.channel_id = oc.channel_id)
              and not exists (
                  select 1 from offer_taken_down td
                  where td.offer_id = os.offer_id and td.channel_id = oc.channel_id and td.ended_on = os.ended_on)
              and not exists (
                  select 1 from offer_piece op
                  join sale_piece sp on sp.piece_id = op.piece_id
                  join sale s on s.id = sp.sale_id
                  join document d on d.id = s.id
                  where op.offer_id = os.offer_id and s.channel_id = oc.channel_id and d.doc_date = os.ended_on)""";

    private final JdbcClient jdbc;
    private final CurrentShop shop;

    TakeDowns(JdbcClient jdbc, CurrentShop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
    }

    /**
     * What may still stand, by channel.
     *
     * @param older also what was over more than {@link #RECENT} days ago
     */
    @Transactional(readOnly = true)
    List<Standing> due(boolean older) {
        LocalDate today = shop.today();
        Map<UUID, List<Row>> byChannel = rows(older).stream()
                .collect(Collectors.groupingBy(Row::channelId, LinkedHashMap::new, Collectors.toList()));
        return byChannel.values().stream().map(rows -> standing(rows, today)).toList();
    }

    private List<Row> rows(boolean older) {
        return jdbc.sql(
                        "select r.channel_id, r.channel, r.offer_id, o.title, r.state = 'SOLD' as sold, r.ended_on, "
                                + STILL_THERE
                                + " as still_there, r.of_channel from (select c.id as channel_id, c.name as channel, os.offer_id, os.state, os.ended_on,"
                                + " row_number() over (partition by c.id order by os.ended_on, lower(o.title), os.offer_id) as nth,"
                                + " count(*) over (partition by c.id) as of_channel "
                                + STANDING
                                + ") r join offer o on o.id = r.offer_id where r.nth <= :shown order by lower(r.channel), r.channel_id, r.nth")
                .param("since", since(older))
                .param("shown", SHOWN)
                .query(Row.class)
                .list();
    }

    private LocalDate since(boolean older) {
        return older ? LocalDate.EPOCH : shop.today().minusDays(RECENT);
    }

    private static Standing standing(List<Row> rows, LocalDate today) {
        Row first = rows.get(0);
        return new Standing(
                first.channelId(),
                first.channel(),
                rows.stream().map(row -> row.offer(today)).toList(),
                first.ofChannel() - rows.size());
    }

    /** Says that an offer no longer stands on a channel. @return whether it was to be taken down there */
    boolean done(UUID offer, UUID channel) {
        return keep(
                        true,
                        " and oc.channel_id = :channel and os.offer_id = :offer",
                        Map.of("channel", channel, "offer", offer))
                > 0;
    }

    /** Says so of everything that is due on a channel, shown or not. @return how many those were */
    int allDone(UUID channel, boolean older) {
        return keep(older, " and oc.channel_id = :channel", Map.of("channel", channel));
    }

    /** What was said of an earlier end of an offer makes room. */
    private int keep(boolean older, String which, Map<String, UUID> ids) {
        jdbc.sql("delete from offer_taken_down where (offer_id, channel_id) in (select os.offer_id, oc.channel_id "
                        + STANDING + which + ")")
                .param("since", since(older))
                .params(ids)
                .update();
        return jdbc.sql("insert into offer_taken_down (offer_id, channel_id, ended_on, done_on)"
                        + " select os.offer_id, oc.channel_id, os.ended_on, :today " + STANDING + which)
                .param("since", since(older))
                .param("today", shop.today())
                .params(ids)
                .update();
    }

    /** Takes back what was said of an offer on a channel: it is asked again. */
    void back(UUID offer, UUID channel) {
        jdbc.sql("delete from offer_taken_down where offer_id = ? and channel_id = ?")
                .params(offer, channel)
                .update();
    }

    @Transactional(readOnly = true)
    List<Done> doneToday() {
        return jdbc.sql("""
                        select td.offer_id, td.channel_id, o.title, c.name as channel
                        from offer_taken_down td
                        join offer o on o.id = td.offer_id
                        join channel c on c.id = td.channel_id
                        where td.done_on = ?
                        order by lower(c.name), lower(o.title), td.offer_id""").param(shop.today()).query(Done.class).list();
    }

    /** Whether anything is ever left standing on a channel. */
    void listed(UUID channel, boolean listed) {
        jdbc.sql("delete from channel_unlisted where channel_id = ?")
                .param(channel)
                .update();
        if (!listed) {
            jdbc.sql("insert into channel_unlisted (channel_id) select id from channel where id = ?")
                    .param(channel)
                    .update();
        }
    }

    @Transactional(readOnly = true)
    List<Unlisted> unlisted() {
        return jdbc.sql("""
                        select c.id as channel_id, c.name as channel
                        from channel_unlisted cu join channel c on c.id = cu.channel_id
                        order by lower(c.name)""").query(Unlisted.class).list();
    }
}
