package patinary.opening;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Account;
import patinary.ledger.StockPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.web.Choice;

/** What can be chosen on the opening page. */
@Component
class OpeningChoices {

    /** What may be owed on the first day, either way. */
    static final List<Account> OWED = List.of(
            Account.RECEIVABLE,
            Account.PAYABLE,
            Account.CUSTOMER_DEPOSITS,
            Account.STORE_CREDIT_GIVEN,
            Account.STORE_CREDIT_HELD,
            Account.SALES_TAX_DUE);

    private final Supplies supplies;
    private final MoneyPlaces places;
    private final JdbcClient jdbc;

    OpeningChoices(Supplies supplies, MoneyPlaces places, JdbcClient jdbc) {
        this.supplies = supplies;
        this.places = places;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public Map<UUID, Supply.Facts> supplyFacts() {
        Map<UUID, Supply.Facts> facts = new HashMap<>();
        supplies.findAllByOrderByName().forEach(supply -> facts.put(supply.id(), supply.facts()));
        return facts;
    }

    List<Choice> supplies() {
        return named("select s.id, l.name || ', ' || s.name as name from supply s"
                + " join supply_line l on l.id = s.supply_line_id"
                + " where not exists (select 1 from bench_pot p where p.kept_as = s.id) order by l.name, s.name");
    }

    List<Choice> sources() {
        return named("select id, name from source order by name");
    }

    List<Choice> stockPlaces() {
        return Stream.of(StockPlace.values())
                .map(place -> Choice.said(place.name(), "opening.place." + place.name()))
                .toList();
    }

    List<Choice> owed() {
        return OWED.stream()
                .map(account -> Choice.said(account.name(), "opening.owed." + account.name()))
                .toList();
    }

    /** The names of the money places, by id, in the order in which the page shows them. */
    Map<String, String> moneyPlaces() {
        Map<String, String> names = new java.util.LinkedHashMap<>();
        places.findAllByOrderByName().forEach(place -> names.put(place.id().toString(), place.name()));
        return names;
    }

    /** Code and name of the pieces that the opening holds already, by id. */
    Map<String, String> pieces() {
        Map<String, String> names = new HashMap<>();
        jdbc.sql("select p.id, p.code, p.title from opening_piece o join piece p on p.id = o.piece_id")
                .query(row -> {
                    names.put(row.getString("id"), row.getString("code") + " " + row.getString("title"));
                });
        return names;
    }

    private List<Choice> named(String sql) {
        return jdbc.sql(sql)
                .query((row, number) -> Choice.named(row.getString("id"), row.getString("name")))
                .list();
    }
}
