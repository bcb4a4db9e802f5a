package patinary.taxyear;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.covering.OpenCovers;
import patinary.ledger.Readings;
import patinary.money.Amount;
import patinary.taxbasis.TaxYears;

/** What is still open in a year, before it is sealed. Reads what other pages show and adds up nothing of its own. */
@Service
@Transactional(readOnly = true)
class Closing {

    /** A count at most so many days before the year's end settles it well enough; common practice, no source. */
    static final int COUNTED_WITHIN = 90;

    private static final String ROWS = """
            select item, link, what, min(from_day) as on_day, cast(count(*) as integer) as times,
                   cast(sum(amount_minor) as bigint) as amount_minor
            from closing_row
            where (from_day is null or from_day <= :last)
              and (settled_on is null or settled_on > :last)
              and (gone_on is null or gone_on >= :first)
              and (item not in ('BY_EYE', 'CASH')
                   or thing_id not in (select thing_id from closing_count where counted_on between :recent and :last))
            group by item, thing_id, link, what
            having item <> 'BY_EYE'
                or (select sum(p.quantity) from posting p
                    where p.supply_id = thing_id and p.account = 'BENCH' and p.doc_date <= :last) > 0""";

    private static final String BELOW_ZERO = """
            select 'BELOW_ZERO' as item, '/money-places/' || cast(m.id as varchar(36)) as link, m.name as what,
                   cast(null as date) as on_day, 1 as times, cast(sum(p.amount_minor) as bigint) as amount_minor
            from posting p
            join money_place m on m.id = p.place_id
            where p.account = 'MONEY' and m.kind in ('CASH', 'BANK') and p.doc_date <= :last
            group by m.id, m.name
            having sum(p.amount_minor) < 0""";

    private record Asked(LocalDate first, LocalDate last) {}

    private final JdbcClient jdbc;
    private final Readings readings;
    private final Years years;
    private final OpenCovers covers;
    private final TaxYears taxYears;

    Closing(JdbcClient jdbc, Readings readings, Years years, OpenCovers covers, TaxYears taxYears) {
        this.jdbc = jdbc;
        this.readings = readings;
        this.years = years;
        this.covers = covers;
        this.taxYears = taxYears;
    }

    /** How much is open of each item, without those of which nothing is. */
    public List<OpenItem> items(int year) {
        Map<ClosingItem, List<ClosingRow>> rows = all(year).collect(Collectors.groupingBy(ClosingRow::item));
        return Arrays.stream(ClosingItem.values())
                .filter(rows::containsKey)
                .map(item -> open(item, rows.get(item)))
                .toList();
    }

    /** Everything that is open of one item. */
    public List<ClosingRow> rows(int year, ClosingItem item) {
        return all(year).filter(row -> row.item() == item).toList();
    }

    private static OpenItem open(ClosingItem item, List<ClosingRow> rows) {
        List<Amount> amounts = rows.stream()
                .map(ClosingRow::amountMinor)
                .filter(Objects::nonNull)
                .map(Amount::of)
                .toList();
        Long sum = amounts.isEmpty()
                ? null
                : amounts.stream().collect(Amount.sum()).minor();
        return new OpenItem(item, rows.size(), sum);
    }

    private Stream<ClosingRow> all(int year) {
        LocalDate first = taxYears.first(year);
        LocalDate last = taxYears.last(year);
        return Stream.of(
                        ofYear(year),
                        read(year),
                        covers(ClosingItem.PAYOUTS, covers.payouts(first, last)),
                        covers(ClosingItem.GROSS, covers.gross(first, last)))
                .flatMap(rows -> rows);
    }

    private Stream<ClosingRow> ofYear(int year) {
        YearPage page = years.page(year);
        String link = "/year/" + year;
        Stream<ClosingRow> disagree = page.agrees()
                ? Stream.empty()
                : Stream.of(ClosingRow.of(
                        ClosingItem.DISAGREE,
                        link,
                        "",
                        null,
                        page.goods().cost().minus(page.costByLedger()).minor()));
        return Stream.concat(
                disagree,
                page.unmapped().stream()
                        .map(sum -> ClosingRow.of(
                                ClosingItem.UNMAPPED,
                                link + "/line/unmapped",
                                sum.account(),
                                null,
                                sum.shown().minor())));
    }

    private static Stream<ClosingRow> covers(ClosingItem item, List<OpenCovers.Open> open) {
        return open.stream()
                .map(one -> ClosingRow.of(
                        item, one.link(), one.place(), one.day(), one.amount().minor()));
    }

    /** What the books say by themselves: both in one question. */
    private Stream<ClosingRow> read(int year) {
        LocalDate first = taxYears.first(year);
        LocalDate last = taxYears.last(year);
        return readings.ahead(new Asked(first, last), () -> read(first, last)).stream();
    }

    private List<ClosingRow> read(LocalDate first, LocalDate last) {
        return jdbc.sql(BELOW_ZERO + " union all " + ROWS + " order by on_day, what, link")
                .param("first", first)
                .param("last", last)
                .param("recent", last.minusDays(COUNTED_WITHIN))
                .query(ClosingRow.class)
                .list();
    }
}
