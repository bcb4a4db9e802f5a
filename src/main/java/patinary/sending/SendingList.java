package patinary.sending;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Page;
import patinary.web.Window;

/** What is sold and not yet sent, and what was sent today. */
@Repository
@Transactional(readOnly = true)
class SendingList {

    private static final String HEADS = """
            select s.id as sale_id, d.doc_date as sold_on, c.name as channel, s.buyer, s.order_reference, d.note, s.posted_on,
                   coalesce(g.picked_up, false) as picked_up, g.packed_on, coalesce(g.sent_from, '') as sent_from,
                   coalesce(g.destination, '') as destination,
                   coalesce(g.size, '') as size, g.weight_g, g.service_id, cs.name as service,
                   coalesce(g.tracking, '') as tracking, coalesce(g.version, 0) as version,
                   (select cast(coalesce(sum(p.carriage_minor), 0) as bigint) from postage p
                    where p.sale_id = s.id and not p.back) as carriage_minor
            from sale s
            join document d on d.id = s.id
            join channel c on c.id = s.channel_id
            left join sending g on g.sale_id = s.id
            left join carrier_service cs on cs.id = g.service_id
            """;

    private static final String THINGS = """
            select t.sale_id, t.piece_id, t.code, t.title, t.place, t.quantity, t.size, t.grams
            from (select sp.sale_id, sp.line, sp.piece_id, p.code, p.title, p.place, cast(1 as numeric(30, 14)) as quantity,
                         coalesce(z.size, '') as size, z.weight_g as grams
                  from sale_piece sp
                  join piece p on p.id = sp.piece_id
                  left join piece_size z on z.piece_id = p.id
                  union all
                  select l.sale_id, l.line, null, '', l.title, '', l.quantity, '', null
                  from sale_line l
                  where not exists (select 1 from sale_piece sp where sp.sale_id = l.sale_id and sp.line = l.line)
                    and not exists (select 1 from sale_undelivered sk where sk.sale_id = l.sale_id and sk.line = l.line)) t
            where t.sale_id in (:sales)
            order by t.sale_id, t.line, t.code""";

    /** Not sent yet, and not cancelled as a whole before it was. */
    private static final String WAITS = """
            s.posted_on is null
            and (not exists (select 1 from sale_undelivered sk where sk.sale_id = s.id)
                 or exists (select 1 from sale_piece sp where sp.sale_id = s.id)
                 or exists (select 1 from sale_line sl where sl.sale_id = s.id and sl.supply_id is not null))""";

    private record WrapRow(UUID saleId, String wrap) {}

    private final JdbcClient jdbc;
    private final Carriers carriers;
    private final CurrentShop shop;

    SendingList(JdbcClient jdbc, Carriers carriers, CurrentShop shop) {
        this.jdbc = jdbc;
        this.carriers = carriers;
        this.shop = shop;
    }

    /** What waits longest first. */
    Page<ToSend> waiting(Window window) {
        long total = jdbc.sql("select count(*) from sale s where " + WAITS)
                .query(Long.class)
                .single();
        List<ToSend.Head> heads = jdbc.sql(HEADS + "where " + WAITS + """

                        order by d.doc_date, s.id offset :offset rows fetch next :size rows only""")
                .param("offset", window.offset())
                .param("size", window.size())
                .query(ToSend.Head.class)
                .list();
        return Page.of(window, whole(heads), total);
    }

    /** What she marked with today's day, so that a mistake can be taken back. */
    List<ToSend> sentToday() {
        return whole(jdbc.sql(HEADS + "where s.posted_on = :today and s.order_reference <> ''"
                        + " or s.posted_on = :today and g.sale_id is not null order by d.doc_date, s.id")
                .param("today", shop.today())
                .query(ToSend.Head.class)
                .list());
    }

    Optional<ToSend> find(UUID sale) {
        return whole(jdbc.sql(HEADS + "where s.id = :sale")
                        .param("sale", sale)
                        .query(ToSend.Head.class)
                        .list())
                .stream()
                .findFirst();
    }

    private List<ToSend> whole(List<ToSend.Head> heads) {
        if (heads.isEmpty()) {
            return List.of();
        }
        List<UUID> sales = heads.stream().map(ToSend.Head::saleId).toList();
        Map<UUID, List<ToSend.Thing>> things =
                jdbc.sql(THINGS).param("sales", sales).query(ToSend.Thing.class).list().stream()
                        .collect(Collectors.groupingBy(ToSend.Thing::saleId));
        Map<UUID, List<String>> wraps = wraps(sales);
        Map<UUID, Carrier> tables = carriers.all().stream().collect(Collectors.toMap(Carrier::id, Function.identity()));
        LocalDate today = shop.today();
        return heads.stream()
                .map(head -> new ToSend(
                        head,
                        things.getOrDefault(head.saleId(), List.of()),
                        wraps.getOrDefault(head.saleId(), List.of()),
                        cost(head, Optional.ofNullable(tables.get(head.serviceId())), today)))
                .toList();
    }

    private Map<UUID, List<String>> wraps(List<UUID> sales) {
        return jdbc.sql("""
                        select w.sale_id, u.name || ': ' || w.typed as wrap
                        from sale_wrap w join supply u on u.id = w.supply_id
                        where w.sale_id in (:sales)
                        order by w.sale_id, w.line""").param("sales", sales).query(WrapRow.class).list().stream()
                .collect(
                        Collectors.groupingBy(WrapRow::saleId, Collectors.mapping(WrapRow::wrap, Collectors.toList())));
    }

    private static Optional<Amount> cost(ToSend.Head head, Optional<Carrier> carrier, LocalDate today) {
        LocalDate day = head.postedOn() == null ? today : head.postedOn();
        return Optional.ofNullable(head.weightG())
                .flatMap(grams -> carrier.flatMap(known -> known.table().cost(day, grams, BoxSize.kept(head.size()))));
    }
}
