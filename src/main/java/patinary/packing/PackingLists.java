package patinary.packing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Choice;
import patinary.web.Page;
import patinary.web.Window;

/** The lists of market days, each by itself. */
@Repository
class PackingLists {

    /** What is said of a market day. */
    record Facts(
            UUID id,
            String title,
            LocalDate marketDay,
            @Nullable UUID channelId,
            String note) {}

    /** A market day among the others. */
    record Row(
            UUID id,
            String title,
            LocalDate marketDay,
            @Nullable String channel,
            long pieces,
            long packed) {}

    private final JdbcClient jdbc;

    PackingLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The latest first. */
    Page<Row> page(Window window) {
        long total =
                jdbc.sql("select count(*) from packing_list").query(Long.class).single();
        List<Row> rows = jdbc.sql("""
            select l.id, l.title, l.market_day, c.name as channel,
                   (select count(*) from packing_piece p where p.packing_list_id = l.id) as pieces,
                   (select count(*) from packing_piece p where p.packing_list_id = l.id and p.packed) as packed
            from packing_list l left join channel c on c.id = l.channel_id
            order by l.market_day desc, l.id offset :offset rows fetch next :size rows only\
            """)
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    Optional<Facts> find(UUID id) {
        return jdbc.sql("select id, title, market_day, channel_id, note from packing_list where id = ?")
                .param(id)
                .query(Facts.class)
                .optional();
    }

    @Transactional
    public void add(Facts facts) {
        jdbc.sql("insert into packing_list (title, market_day, channel_id, note, id, version) values (?, ?, ?,"
                        + " ?, ?, 0)")
                .params(facts.title(), facts.marketDay(), facts.channelId(), facts.note(), facts.id())
                .update();
    }

    long version(UUID id) {
        return jdbc.sql("select version from packing_list where id = ?")
                .param(id)
                .query(Long.class)
                .single();
    }

    /** @throws OptimisticLockingFailureException where somebody changed it since its form was drawn */
    @Transactional
    public void change(Facts facts, long version) {
        int changed = jdbc.sql("update packing_list set title = ?, market_day = ?, channel_id = ?, note = ?,"
                        + " version = version + 1 where id = ? and version = ?")
                .params(facts.title(), facts.marketDay(), facts.channelId(), facts.note(), facts.id(), version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Market day " + facts.id() + " is stale");
        }
    }

    /** Takes a list away on which nothing is packed; false where something is. */
    @Transactional
    public boolean remove(UUID id) {
        long packed = jdbc.sql("select count(*) from packing_piece where packing_list_id = ? and packed")
                .param(id)
                .query(Long.class)
                .single();
        if (packed > 0) {
            return false;
        }
        jdbc.sql("delete from packing_piece where packing_list_id = ?")
                .param(id)
                .update();
        return jdbc.sql("delete from packing_list where id = ?").param(id).update() > 0;
    }

    List<Choice> channels() {
        return jdbc.sql("select id, name from channel order by lower(name)")
                .query((row, number) -> Choice.named(row.getString("id"), row.getString("name")))
                .list();
    }
}
