package patinary.selling;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.web.Choice;

/** The short lists that the form of a sale offers, read at once. */
@Component
class SaleLists {

    /** Each by name; the places of sales tax are her own, without the answer that a sale is bound to none. */
    record Lists(List<Choice> channels, List<Choice> places, List<Choice> taxPlaces, List<Choice> bundles) {}

    private record Named(String list, UUID id, String name) {}

    private static final String ALL = """
            select list, id, name
            from (select 'CHANNEL' as list, id, name from channel
                  union all select 'PLACE', id, name from money_place
                  union all select 'TAX_PLACE', id, name from tax_place
                  union all select 'BUNDLE', id, name from bundle where not removed) l
            order by lower(name), name, id""";

    private final JdbcClient jdbc;

    SaleLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Lists read() {
        List<Named> all = jdbc.sql(ALL).query(Named.class).list();
        return new Lists(of("CHANNEL", all), of("PLACE", all), of("TAX_PLACE", all), of("BUNDLE", all));
    }

    private static List<Choice> of(String list, List<Named> all) {
        return all.stream()
                .filter(one -> one.list().equals(list))
                .map(one -> Choice.named(one.id().toString(), one.name()))
                .toList();
    }
}
