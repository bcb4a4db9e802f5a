package patinary.bringing;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.web.Choice;

/** What the books know that a file is held against: pieces, the retail shelf, channels and their orders. */
@Component
class KnownGoods {

    /** A channel, as far as a file concerns it. */
    record Place(UUID id, String name, boolean passesTax) {}

    private static final String FOR_SALE = """
            (s.retail_price_minor is not null or s.id in (
                select sl.supply_id from stock_left sl where sl.place = 'SHELF' and sl.quantity > 0))
            and not exists (select 1 from bench_pot p where p.kept_as = s.id)""";

    private final JdbcClient jdbc;

    KnownGoods(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Goods goods() {
        return Goods.of(pieces(), shelf());
    }

    List<Choice> channels() {
        return places().stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    List<Place> places() {
        return jdbc.sql("select id, name, passes_tax from channel order by lower(name)")
                .query(Place.class)
                .list();
    }

    /** The orders of a channel that are in the books, however they came in. */
    Set<String> orders(UUID channel) {
        return jdbc
                .sql("select order_reference from sale where channel_id = ? and order_reference <> ''")
                .param(channel)
                .query(String.class)
                .list()
                .stream()
                .map(FileOrder::key)
                .collect(Collectors.toSet());
    }

    private List<Goods.Piece> pieces() {
        return jdbc.sql("""
                        select p.code, p.title, case when s.state in ('SOLD', 'GONE') then false else true end as free
                        from piece_state s
                        join piece p on p.id = s.piece_id""").query(Goods.Piece.class).list();
    }

    /** What stands on the shelf, or has a retail price, in each of its packs; by ones where it is counted and has none. */
    private List<Goods.Retail> shelf() {
        return jdbc.sql("""
                        select cast(s.id as varchar(36)) as supply, l.name || ', ' || s.name || ', ' || k.name as name,
                               '1 ' || k.name as content
                        from supply s
                        join supply_line l on l.id = s.supply_line_id
                        join supply_pack k on k.supply_id = s.id
                        where %1$s
                        union all
                        select cast(s.id as varchar(36)) as supply, l.name || ', ' || s.name as name, '1' as content
                        from supply s
                        join supply_line l on l.id = s.supply_line_id
                        where s.dimension = 'COUNT' and %1$s
                          and s.id not in (select k.supply_id from supply_pack k)
                        order by 2""".formatted(FOR_SALE)).query(Goods.Retail.class).list();
    }
}
