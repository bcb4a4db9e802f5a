package patinary.arrangements;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.web.Choice;

/** Her own pieces in somebody else's shop: they stay her stock until they are sold there. */
@Repository
@Transactional
class Away {

    /** A piece that lies there. */
    record Lying(UUID channelId, String channel, String code, String title, LocalDate since, long priceMinor) {}

    /** A shop with all that lies there. */
    record Shop(UUID id, String name, List<Lying> pieces) {

        public Amount total() {
            return pieces.stream().map(piece -> Amount.of(piece.priceMinor())).collect(Amount.sum());
        }
    }

    private final JdbcClient jdbc;

    Away(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By shop, each with what is on offer there now; what it asks for a set stands with each piece of it. */
    @Transactional(readOnly = true)
    public List<Shop> shops() {
        Map<UUID, List<Lying>> lying =
                jdbc.sql("""
                        select oc.channel_id, c.name as channel, p.code, p.title, os.started_on as since, os.price_minor
                        from offer_state os
                        left join offer_channel oc on oc.offer_id = os.offer_id
                        left join channel c on c.id = oc.channel_id
                        left join channel_away ca on ca.channel_id = oc.channel_id
                        left join offer_piece op on op.offer_id = os.offer_id
                        left join piece p on p.id = op.piece_id
                        where os.state = 'LIVE' and ca.channel_id is not null
                        order by os.started_on, p.code""").query(Lying.class).list().stream().collect(Collectors.groupingBy(Lying::channelId));
        return named("exists").stream()
                .map(shop -> new Shop(
                        UUID.fromString(shop.value()),
                        String.valueOf(shop.text()),
                        lying.getOrDefault(UUID.fromString(shop.value()), List.of())))
                .toList();
    }

    /** The channels that are not somebody else's shop. */
    @Transactional(readOnly = true)
    public List<Choice> others() {
        return named("not exists");
    }

    void say(UUID channel, boolean isAway) {
        jdbc.sql("delete from channel_away where channel_id = ?").param(channel).update();
        if (isAway) {
            jdbc.sql("insert into channel_away (channel_id) select id from channel where id = ?")
                    .param(channel)
                    .update();
        }
    }

    private List<Choice> named(String exists) {
        return jdbc.sql("select c.id, c.name from channel c where " + exists
                        + " (select 1 from channel_away ca where ca.channel_id = c.id) order by c.name")
                .query((row, number) -> Choice.named(row.getString(1), row.getString(2)))
                .list();
    }
}
