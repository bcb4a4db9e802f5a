package patinary.listing;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** Her patterns, and the texts of offers that she edited. */
@Repository
@Transactional
class Patterns {

    /** A pattern of hers, usually for one channel. */
    record Kept(
            UUID id,
            String name,
            @Nullable UUID channelId,
            @Nullable String channel,
            String title,
            String body,
            long version) {}

    /** The text of an offer as she edited it. */
    record Text(String title, String body, long version) {}

    private static final String KEPT = """
            select p.id, p.name, p.channel_id, c.name as channel, p.title, p.body, p.version
            from listing_pattern p left join channel c on c.id = p.channel_id
            """;

    private final JdbcClient jdbc;

    Patterns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By name. */
    @Transactional(readOnly = true)
    List<Kept> all() {
        return jdbc.sql(KEPT + "order by lower(p.name), p.id").query(Kept.class).list();
    }

    @Transactional(readOnly = true)
    Optional<Kept> find(UUID id) {
        return jdbc.sql(KEPT + "where p.id = ?").param(id).query(Kept.class).optional();
    }

    /** The pattern meant for an offer where none was chosen: one for a channel it stands on, else the first. */
    @Transactional(readOnly = true)
    Optional<Kept> usual(UUID offer) {
        return jdbc.sql(KEPT + """
                        order by case when exists (select 1 from offer_channel oc
                                                   where oc.offer_id = ? and oc.channel_id = p.channel_id) then 0 else 1 end,
                                 lower(p.name), p.id
                        fetch first 1 row only""").param(offer).query(Kept.class).optional();
    }

    /** @throws OptimisticLockingFailureException where somebody changed it since its form was drawn */
    void save(Kept pattern) {
        int changed = jdbc.sql(
                        "update listing_pattern set name = ?, channel_id = ?, title = ?, body = ?, version = version + 1"
                                + " where id = ? and version = ?")
                .params(
                        pattern.name(),
                        pattern.channelId(),
                        pattern.title(),
                        pattern.body(),
                        pattern.id(),
                        pattern.version())
                .update();
        if (changed > 0) {
            return;
        }
        if (find(pattern.id()).isPresent()) {
            throw new OptimisticLockingFailureException("Pattern " + pattern.id() + " is stale");
        }
        jdbc.sql("insert into listing_pattern (id, name, channel_id, title, body) values (?, ?, ?, ?, ?)")
                .params(pattern.id(), pattern.name(), pattern.channelId(), pattern.title(), pattern.body())
                .update();
    }

    /** The texts that were edited under it go too. */
    void remove(UUID id) {
        if (jdbc.sql("delete from listing_pattern where id = ?").param(id).update() == 0) {
            throw new NotFound("Pattern " + id);
        }
    }

    /** The channels a pattern can be for, by name. */
    @Transactional(readOnly = true)
    List<Channel> channels() {
        return jdbc.sql("select id, name from channel order by lower(name), id")
                .query(Channel.class)
                .list();
    }

    record Channel(UUID id, String name) {}

    @Transactional(readOnly = true)
    Optional<Text> text(UUID offer, UUID pattern) {
        return jdbc.sql("select title, body, version from listing_text where offer_id = ? and pattern_id = ?")
                .params(offer, pattern)
                .query(Text.class)
                .optional();
    }

    /** @throws OptimisticLockingFailureException where somebody changed it since its form was drawn */
    void keep(UUID offer, UUID pattern, Text text) {
        int changed = jdbc.sql("update listing_text set title = ?, body = ?, version = version + 1"
                        + " where offer_id = ? and pattern_id = ? and version = ?")
                .params(text.title(), text.body(), offer, pattern, text.version())
                .update();
        if (changed > 0) {
            return;
        }
        if (text(offer, pattern).isPresent()) {
            throw new OptimisticLockingFailureException("Text of offer " + offer + " is stale");
        }
        jdbc.sql("insert into listing_text (offer_id, pattern_id, title, body) values (?, ?, ?, ?)")
                .params(offer, pattern, text.title(), text.body())
                .update();
    }

    /** From then on it is made anew. */
    void forget(UUID offer, UUID pattern) {
        jdbc.sql("delete from listing_text where offer_id = ? and pattern_id = ?")
                .params(offer, pattern)
                .update();
    }
}
