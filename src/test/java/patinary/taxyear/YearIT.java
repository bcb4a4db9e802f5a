package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.whole.RandomShop;

/**
 * A year over random histories of real documents: what the page says, what the files add up to and what the ledger holds
 * are the same. Everything is invented.
 */
@ShopTest
@ExtendWith(Browser.class)
class YearIT {

    private static final CSVFormat CSV =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Books books;

    @Autowired
    private Years years;

    @Autowired
    private Seals seals;

    @Autowired
    private CurrentShop shop;

    private final UUID cash = UUID.randomUUID();
    private final UUID stall = UUID.randomUUID();
    private final List<UUID> supplies = ids(3);
    private final List<UUID> pieces = ids(6);

    @BeforeEach
    void stockTheShop() {
        UUID line = UUID.randomUUID();
        jdbc.sql("insert into money_place (id, name, kind, version) values (?, 'Cash box', 'CASH', 0)")
                .param(cash)
                .update();
        jdbc.sql("insert into channel (id, name, money_place_id, passes_tax, version) values (?, 'Stall', ?, false, 0)")
                .params(stall, cash)
                .update();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Chalk paints', 'invented', 0)")
                .param(line)
                .update();
        for (int i = 0; i < supplies.size(); i++) {
            jdbc.sql("insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, ?, 'VOLUME', 0)")
                    .params(supplies.get(i), line, "Paint " + i)
                    .update();
        }
        for (int i = 0; i < pieces.size(); i++) {
            jdbc.sql(
                            "insert into piece (id, code, title, material, place, note, version) values (?, ?, ?, '', '', '', 0)")
                    .params(pieces.get(i), "P000" + i, "=Piece " + i)
                    .update();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void pageFilesAndLedgerAgree(long seed) throws Exception {
        type(seed);
        spend("/expenses/new", "category", "office", "amount", "12.50");
        spend("/other-income/new", "category", "=Lessons", "amount", "80");
        YearPage page = years.page(2025);
        assertThat(page.agrees()).as("%s", page.goods()).isTrue();
        assertThat(page.goods().closing()).isEqualTo(ledger("account in ('PIECES', 'BENCH', 'SHELF')"));
        assertThat(page.unmapped()).isEmpty();

        List<CSVRecord> income = file("income");
        assertThat(sum(income)).isEqualTo(amount(page, "gross_income").plus(amount(page, "cost_of_goods_sold")));
        List<CSVRecord> expenses = file("expenses");
        assertThat(sum(expenses)).isEqualTo(amount(page, "total_expenses"));
        assertThat(sum(income).minus(sum(expenses)).minus(page.goods().cost()))
                .isEqualTo(page.profit())
                .isEqualTo(amount(page, "net_profit"));

        List<CSVRecord> cost = file("purchases-and-cost");
        assertThat(sum(cost, row -> row.get("what").equals("GOODS")))
                .isEqualTo(page.goods().purchases());
        assertThat(sum(cost, row -> row.get("what").equals("MATERIALS")))
                .isEqualTo(page.goods().materials());
        assertThat(sum(cost, row -> row.get("what").equals("OWN_USE")))
                .isEqualTo(page.goods().ownUse());
        assertThat(sum(cost, row -> row.get("what").equals("COST"))).isEqualTo(page.costByLedger());
        assertThat(sum(file("stock"), row -> true, "cost"))
                .isEqualTo(page.goods().closing());

        List<CSVRecord> journal = file("journal");
        assertThat(sum(journal)).isEqualTo(Amount.ZERO);
        assertThat(journal)
                .hasSize(jdbc.sql("select count(*) from posting")
                        .query(Integer.class)
                        .single());
        for (String account : List.of("MONEY", "SALES", "PIECES", "BENCH", "OWNER_OUT", "SALES_TAX_DUE")) {
            assertThat(sum(journal, row -> row.get("account").equals(account)))
                    .isEqualTo(ledger("account = '" + account + "'"));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 4})
    void everyLineOpensTheRowsItRestsOn(long seed) throws Exception {
        type(seed);
        YearPage page = years.page(2025);
        for (YearPage.Part part : page.parts()) {
            for (YearPage.Line line : part.lines()) {
                if (line.opens()) {
                    String meaning = line.line().meaning();
                    long rows = years.rows(2025, meaning).stream()
                            .mapToLong(YearBooks.Row::amountMinor)
                            .sum();
                    long turned = meaning.equals("gross_receipts") || meaning.equals("other_income") ? -rows : rows;
                    assertThat(Amount.of(turned)).as(meaning).isEqualTo(line.amount());
                }
            }
        }
        for (String path : List.of("", "/line/gross_receipts", "/line/cogs_purchases", "/stock")) {
            mvc.perform(get("/year/2025" + path).with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(not(containsString("??"))));
        }
    }

    @Test
    void aYearBeginsWithTheStockTheLastOneEndedWith() {
        type(3);
        assertThat(years.page(2026).goods().opening())
                .isEqualTo(years.page(2025).goods().closing());
        assertThat(years.page(2026).goods().cost()).isEqualTo(Amount.ZERO);
        assertThat(years.page(2026).goods().opening().isPositive()).isTrue();
    }

    /** The pages of money, of what moves and of the year, on a phone and on a laptop. */
    @Test
    void thePagesCanBeReadAndUsed(Browser.Visit visit) throws Exception {
        type(6);
        spend("/expenses/new", "category", "office", "amount", "12.50", "payee", "Larch Hall");
        visit.signIn();
        for (String path : List.of(
                "/",
                "/on-the-shelf/tied-bench",
                "/expenses",
                "/expenses/new",
                "/trips/new",
                "/owner-money/new",
                "/money-places/new",
                "/moves?from=2025-01-01&to=2025-12-31",
                "/year/2025",
                "/year/2025/line/cogs_purchases",
                "/year/2025/stock",
                "/year/2025/seal")) {
            visit.open(path);
            visit.look("money" + path.replaceAll("[^a-z0-9]+", "-"));
        }
    }

    @Test
    void noCellOfAFileStartsAFormula() throws Exception {
        type(2);
        spend("/other-income/new", "category", "=Lessons", "amount", "80");
        for (String name :
                List.of("income", "purchases-and-cost", "expenses", "stock", "stock-how-it-arose", "journal")) {
            for (CSVRecord row : file(name)) {
                for (String cell : row) {
                    assertThat(cell).doesNotStartWith("=").doesNotStartWith("@").doesNotStartWith("+");
                }
            }
        }
        assertThat(file("journal")).anyMatch(row -> row.get("title").startsWith("'=Piece"));
        assertThat(file("income")).anyMatch(row -> row.get("category").equals("'=Lessons"));
    }

    @Test
    void aYearWithoutAKnownFormIsSortedByThePlainList() throws Exception {
        mvc.perform(get("/year/2022").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("The plain list stands in")));
        mvc.perform(get("/year").with(owner()))
                .andExpect(redirectedUrl("/year/" + shop.today().getYear()));
    }

    @Test
    void aSealedYearRefusesChangesUntilTheOwnerTakesTheSealOff() throws Exception {
        type(5);
        String before = seals.fingerprint(2025);
        mvc.perform(post("/year/2025/seal").with(owner())).andExpect(status().isUnprocessableContent());
        mvc.perform(post("/year/2025/seal")
                        .with(user("Kim").roles("HELPER"))
                        .with(csrf())
                        .param("sure", "true")
                        .param("nonetheless", "true"))
                .andExpect(forwardedUrl("/refused"));
        assertThat(seals.of(2025)).as("a helper seals nothing").isEmpty();
        mvc.perform(post("/year/2025/seal").with(owner()).param("sure", "true").param("nonetheless", "true"))
                .andExpect(redirectedUrl("/year/2025"));
        assertThat(seals.of(2025).orElseThrow().hash()).isEqualTo(before);
        assertThat(seals.of(2025).orElseThrow().holds()).isTrue();

        expense("2025-12-31")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("is sealed")));
        expense("2026-01-01").andExpect(redirectedUrl("/expenses"));
        mvc.perform(get("/year/2025/seal").with(owner())).andExpect(content().string(containsString(before)));

        mvc.perform(post("/year/2024/seal").with(owner()).param("sure", "true").param("nonetheless", "true"))
                .andExpect(status().isUnprocessableContent());
        takeOff(2025).andExpect(redirectedUrl("/year/2025"));
        assertThat(seals.of(2025)).isEmpty();
        assertThat(seals.takenOff(2025)).singleElement().satisfies(trace -> {
            assertThat(trace.reason()).isEqualTo("an invented bill turned up");
            assertThat(trace.takenOffBy()).isEqualTo(InventedShop.OWNER);
            assertThat(trace.postingsHash()).isEqualTo(before);
        });
        mvc.perform(get("/year/2025/seal").with(owner()))
                .andExpect(content().string(containsString("an invented bill turned up")));
        expense("2025-12-31").andExpect(redirectedUrl("/expenses"));
        assertThat(seals.fingerprint(2025)).isNotEqualTo(before);
    }

    @Test
    void aYearThatIsNotOverIsNotSealed() throws Exception {
        mvc.perform(post("/year/" + shop.today().getYear() + "/seal")
                        .with(owner())
                        .param("sure", "true"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("not over yet")));
    }

    @Test
    void aSealThatNoLongerHoldsIsSaid() throws Exception {
        type(5);
        mvc.perform(post("/year/2025/seal").with(owner()).param("sure", "true").param("nonetheless", "true"))
                .andExpect(redirectedUrl("/year/2025"));
        jdbc.sql("update posting set amount_minor = amount_minor + 1 where account = 'SALES'")
                .update();
        mvc.perform(get("/year/2025").with(owner()))
                .andExpect(content().string(containsString("no longer those that were sealed")));
    }

    private void type(long seed) {
        List<Document> documents =
                new ArrayList<>(RandomShop.history(seed, new RandomShop.Things(cash, stall, supplies, pieces)));
        documents.sort(Comparator.comparing(Document::ref));
        documents.forEach(books::record);
    }

    private org.springframework.test.web.servlet.ResultActions takeOff(int year) throws Exception {
        return mvc.perform(
                post("/year/" + year + "/seal/open").with(owner()).param("reason", "an invented bill turned up"));
    }

    private void spend(String path, String... answers) throws Exception {
        var request = post(path)
                .with(owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-03-08")
                .param("placeId", cash.toString());
        for (int i = 0; i < answers.length; i += 2) {
            request.param(answers[i], answers[i + 1]);
        }
        mvc.perform(request).andExpect(redirectedUrl("/expenses"));
    }

    private org.springframework.test.web.servlet.ResultActions expense(String day) throws Exception {
        return mvc.perform(post("/expenses/new")
                .with(owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", LocalDate.parse(day).toString())
                .param("category", "office")
                .param("placeId", cash.toString())
                .param("amount", "3"));
    }

    private List<CSVRecord> file(String name) throws Exception {
        String text = mvc.perform(get("/year/2025/" + name + ".csv").with(owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        return records(text);
    }

    private static List<CSVRecord> records(String text) throws IOException {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), CSV)) {
            return parser.getRecords();
        }
    }

    private Amount ledger(String which) {
        return Amount.of(jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where " + which)
                .query(Long.class)
                .single());
    }

    private static Amount amount(YearPage page, String meaning) {
        return page.parts().stream()
                .flatMap(part -> part.lines().stream())
                .filter(line -> line.line().meaning().equals(meaning))
                .map(YearPage.Line::amount)
                .findFirst()
                .orElseThrow();
    }

    private static Amount sum(List<CSVRecord> rows) {
        return sum(rows, row -> true);
    }

    private static Amount sum(List<CSVRecord> rows, Predicate<CSVRecord> which) {
        return sum(rows, which, "amount");
    }

    private static Amount sum(List<CSVRecord> rows, Predicate<CSVRecord> which, String column) {
        return rows.stream()
                .filter(which)
                .map(row -> Amount.of(
                        new BigDecimal(row.get(column)).movePointRight(2).longValueExact()))
                .collect(Amount.sum());
    }

    private static List<UUID> ids(int count) {
        return Stream.generate(UUID::randomUUID).limit(count).toList();
    }
}
