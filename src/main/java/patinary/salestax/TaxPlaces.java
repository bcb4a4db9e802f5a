package patinary.salestax;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.money.Percent;
import patinary.web.Choice;

/** The places of sales tax and their dated rates; which of them is usual on a channel. */
@Service
@Transactional
public class TaxPlaces {

    /** A channel and the place where its sales are usually taxed. */
    record Usual(
            UUID channelId,
            String channel,
            boolean passesTax,
            @Nullable UUID taxPlaceId) {}

    /** A place with one of its rates, or with none. */
    private record Row(
            UUID id,
            String name,
            long version,
            @Nullable LocalDate validFrom,
            @Nullable BigDecimal percent,
            @Nullable Boolean shippingTaxed,
            long uses) {
        Optional<TaxRule> rule() {
            return validFrom == null || percent == null || shippingTaxed == null
                    ? Optional.empty()
                    : Optional.of(new TaxRule(validFrom, new Percent(percent), shippingTaxed));
        }
    }

    /** The file of the shop archive that keeps them. */
    private static final String TABLE = "tax_place";

    private final JdbcClient jdbc;
    private final Trail trail;

    TaxPlaces(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    @Transactional(readOnly = true)
    public List<TaxPlace> all() {
        Map<UUID, List<Row>> places = jdbc.sql("""
                        select tp.id, tp.name, tp.version, r.valid_from, r.percent, r.shipping_taxed,
                               (select count(*) from sale s where s.tax_place_id = tp.id)
                               + (select count(*) from sales_tax_paid p where p.tax_place_id = tp.id)
                               + (select count(*) from sales_tax_filed f where f.tax_place_id = tp.id) as uses
                        from tax_place tp
                        left join tax_place_rate r on r.tax_place_id = tp.id
                        order by lower(tp.name), tp.id, r.valid_from desc""").query(Row.class).list().stream()
                .collect(Collectors.groupingBy(Row::id, LinkedHashMap::new, Collectors.toList()));
        return places.values().stream().map(TaxPlaces::place).toList();
    }

    private static TaxPlace place(List<Row> rows) {
        Row first = rows.get(0);
        return new TaxPlace(
                first.id(),
                first.name(),
                first.version(),
                rows.stream().flatMap(row -> row.rule().stream()).toList(),
                first.uses());
    }

    @Transactional(readOnly = true)
    public Optional<TaxPlace> find(UUID id) {
        return all().stream().filter(place -> place.id().equals(id)).findFirst();
    }

    @Transactional(readOnly = true)
    public List<Choice> choices() {
        return all().stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    /** The place where sales of a channel are usually taxed. */
    @Transactional(readOnly = true)
    public Optional<UUID> usual(UUID channel) {
        return jdbc.sql("select tax_place_id from channel_tax_place where channel_id = ?")
                .param(channel)
                .query(UUID.class)
                .optional();
    }

    @Transactional(readOnly = true)
    List<Usual> usuals() {
        return jdbc.sql("""
                        select c.id as channel_id, c.name as channel, c.passes_tax, u.tax_place_id
                        from channel c left join channel_tax_place u on u.channel_id = c.id
                        order by lower(c.name), c.id""").query(Usual.class).list();
    }

    /** Says where sales of a channel are usually taxed, or with null that there is no usual place. */
    void makeUsual(UUID channel, @Nullable UUID place) {
        jdbc.sql("delete from channel_tax_place where channel_id = ?")
                .param(channel)
                .update();
        if (place != null) {
            jdbc.sql("insert into channel_tax_place (channel_id, tax_place_id) select c.id, p.id from channel c"
                            + " join tax_place p on p.id = ? where c.id = ?")
                    .params(place, channel)
                    .update();
        }
    }

    @Transactional(readOnly = true)
    boolean nameTaken(String name, UUID own) {
        return all().stream()
                .anyMatch(place ->
                        place.name().equalsIgnoreCase(name) && !place.id().equals(own));
    }

    /** A new place with its first rate; sent twice it is there once. */
    void add(UUID id, String name, TaxRule first) {
        trail.thing(TABLE, id);
        if (find(id).isEmpty()) {
            jdbc.sql("insert into tax_place (id, name, version) values (?, ?, 0)")
                    .params(id, name)
                    .update();
            insert(id, first);
        }
    }

    void rename(UUID id, long version, String name) {
        trail.thing(TABLE, id);
        int changed = jdbc.sql("update tax_place set name = ?, version = version + 1 where id = ? and version = ?")
                .params(name, id, version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Tax place " + id + " is stale");
        }
    }

    /** One more rate; the caller has seen that no other begins on that day. */
    void addRate(UUID id, TaxRule rule) {
        trail.thing(TABLE, id);
        insert(id, rule);
    }

    /** Takes a rate away that no sale rests on. @return whether it could be */
    boolean removeRate(UUID id, LocalDate from) {
        trail.thing(TABLE, id);
        return jdbc.sql("""
                        delete from tax_place_rate
                        where tax_place_id = :place and valid_from = :from
                          and not exists (select 1 from sale s join document d on d.id = s.id
                                          where s.tax_place_id = :place and d.doc_date >= :from)""").param("place", id).param("from", from).update() > 0;
    }

    /** Removes a place that nothing names. @return whether it could be */
    boolean remove(UUID id) {
        trail.thing(TABLE, id);
        return find(id).filter(place -> place.uses() == 0).isPresent()
                && jdbc.sql("delete from tax_place where id = ?").param(id).update() > 0;
    }

    private void insert(UUID id, TaxRule rule) {
        jdbc.sql("insert into tax_place_rate (tax_place_id, valid_from, percent, shipping_taxed) values (?, ?, ?, ?)")
                .params(id, rule.validFrom(), rule.percent().value(), rule.shippingTaxed())
                .update();
    }
}
