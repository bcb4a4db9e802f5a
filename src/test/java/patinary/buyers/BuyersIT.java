package patinary.buyers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.containsStringIgnoringCase;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.nio.charset.Charset;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.shop.CurrentShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;
import patinary.web.Window;

/** Erasing a buyer, with every cent and every seal as before. All names are invented. */
@ShopTest
class BuyersIT {

    private static final String NAME = "Ann Invénted";
    private static final LocalDate SOLD = LocalDate.of(2025, 3, 10);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Buyers buyers;

    @Autowired
    private CurrentShop shop;

    private Trestle trestle;
    private UUID sale;

    @BeforeEach
    void sold() throws Exception {
        trestle = new Trestle(program);
        trestle.piece("Tin tray", "Box 1");
        trestle.piece("Enamel jug", "Box 1");
        trestle.piece("Oak frame", "Box 1");
        sale = sell("P0001", SOLD, NAME, "ORDER-77");
        sell("P0002", SOLD.plusDays(1), NAME.toUpperCase(Locale.ROOT), "");
    }

    @Test
    void nothingOfTheNameRemainsAndNoCentMoves() throws Exception {
        writeTheNameEverywhere();
        mvc.perform(post("/year/2025/seal").with(owner()).param("sure", "true").param("nonetheless", "true"))
                .andExpect(status().is3xxRedirection());
        List<Map<String, Object>> postings = postings();
        String hash = hash();
        assertThat(placesOf("invénted"))
                .as("the test sees the name where it stands")
                .hasSize(10)
                .contains("history.content_after");

        Buyer ann = buyers.of(sale).orElseThrow();
        assertThat(ann.sales()).as("one buyer whatever the case").isEqualTo(2);
        page("/buyers/" + sale)
                .andExpect(content().string(containsString("A file of sales that waits")))
                .andExpect(content().string(containsString("Sealed years stay sealed")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(post("/buyers/" + sale).with(owner()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Tick that you are sure")));
        assertThat(buyers.of(sale).orElseThrow().name()).as("asked first").isEqualToIgnoringCase(NAME);

        erase(sale);

        assertThat(placesOf("invénted")).isEmpty();
        assertThat(placesOf("invented lane")).as("where the parcel went").isEmpty();
        assertThat(placesOf("track-1")).isEmpty();
        assertThat(placesOf("erased buyer 1"))
                .contains("sale.buyer", "payment.buyer", "document.note", "delivery.words");
        assertThat(placesOf("order-77"))
                .as("kept unless chosen")
                .containsExactly("history.content_after", "sale.order_reference");
        assertThat(postings()).isEqualTo(postings);
        assertThat(hash()).isEqualTo(hash);
        page("/year/2025").andExpect(content().string(not(containsString("no longer those that were sealed"))));
        assertThat(buyers.page("", Window.of(1)).rows())
                .extracting(Buyer::name, Buyer::sales)
                .containsExactly(org.assertj.core.api.Assertions.tuple("Erased buyer 1", 2L));
        mvc.perform(get("/buyers/" + sale).with(owner())).andExpect(status().isNotFound());
    }

    @Test
    void anOpenEditDoesNotPutTheNameBack() throws Exception {
        long version = version(sale);
        erase(sale);
        assertThat(version(sale)).isGreaterThan(version);
    }

    @Test
    void notesAndOrderNumbersGoWhereChosen() throws Exception {
        writeTheNameEverywhere();
        mvc.perform(post("/buyers/" + sale)
                        .with(owner())
                        .param("sure", "true")
                        .param("notes", "true")
                        .param("orders", "true"))
                .andExpect(status().is3xxRedirection());
        assertThat(placesOf("order-77")).isEmpty();
        assertThat(jdbc.sql("select note from document where id = ?")
                        .param(sale)
                        .query(String.class)
                        .single())
                .isEmpty();
    }

    @Test
    void theNameGoesFromTheHistoryOfWhatWasRemovedToo() throws Exception {
        UUID removed = sell("P0003", SOLD, NAME, "ORDER-99");
        mvc.perform(post("/sales/" + removed + "/remove").with(owner())).andExpect(status().is3xxRedirection());
        mvc.perform(post("/buyers/" + sale).with(owner()).param("sure", "true").param("orders", "true"))
                .andExpect(status().is3xxRedirection());

        assertThat(placesOf("invénted")).isEmpty();
        assertThat(placesOf("order-99")).isEmpty();
        assertThat(placesOf("erased buyer 1")).contains("history.content_before", "history.content_after");
    }

    @Test
    void oldNamesAreProposedUnlessTheyOwe() throws Exception {
        UUID fresh = sell("P0003", shop.today(), "Ben Madeup", "");
        keepAddress(fresh);
        page("/buyers?q=made").andExpect(content().string(containsString("Ben Madeup")));
        page("/buyers/old?months=6")
                .andExpect(content().string(containsStringIgnoringCase("invénted")))
                .andExpect(content().string(not(containsString("Ben Madeup"))))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/buyers/old?months=0").with(owner())).andExpect(status().is(422));
        Buyer old = buyers.before(shop.today().minusMonths(6)).get(0);
        mvc.perform(post("/buyers/old")
                        .with(owner())
                        .param("months", "6")
                        .param("sure", "true")
                        .param("chosen", String.valueOf(old.documentId())))
                .andExpect(status().is3xxRedirection());
        assertThat(buyers.page("", Window.of(1)).rows())
                .extracting(Buyer::name)
                .containsExactly("Ben Madeup", "Erased buyer 1");
        assertThat(placesOf("invented lane")).as("of a buyer who stays").containsExactly("sending.destination");

        jdbc.sql("update posting set account = 'RECEIVABLE' where document_id = ? and account = 'MONEY'")
                .param(sale)
                .update();
        jdbc.sql("update sale set buyer = 'Cleo Fictive' where id = ?")
                .param(sale)
                .update();
        assertThat(buyers.of(sale).orElseThrow().owedMinor()).isEqualTo(2000);
        assertThat(buyers.before(shop.today().minusMonths(6))).isEmpty();
    }

    /** Notes, an address, a loss, work done, a phone's receipt, a file that waits, and the name of one brought in. */
    private void writeTheNameEverywhere() {
        keepAddress(sale);
        run("update document set note = 'For " + NAME + ", as a gift'");
        run("insert into mail_loss (id, sale_id, what, noticed_on, words, reference) values ('" + UUID.randomUUID()
                + "', '" + sale + "', 'LOST', date '2025-03-20', 'Says " + NAME + "', '')");
        run("update piece set note = 'Asked for by " + NAME.toLowerCase(Locale.ROOT) + "'");
        run("insert into packing_list (id, title, market_day, note, version) values ('" + UUID.randomUUID()
                + "', 'May', date '2025-05-01', 'Bring the tray for " + NAME + "', 0)");
        run("insert into delivery (who, entry_key, fingerprint, href, words, received_at) values ('Owner', '"
                + UUID.randomUUID() + "', 'f', '/sales/1', 'Sold to " + NAME
                + "', timestamp with time zone '2025-03-10 10:00:00+00')");
        run("insert into sales_import (id, file_name, channel_id, brought_in_at, sales) values ('" + UUID.randomUUID()
                + "', '" + NAME + ".csv', '" + trestle.stall
                + "', timestamp with time zone '2025-03-10 10:00:00+00', 1)");
        UUID payment = UUID.randomUUID();
        run("insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version) values ('" + payment
                + "', 'PAYMENT', 10, date '2025-03-11', 'Ahead, " + NAME
                + "', timestamp with time zone '2025-03-11 10:00:00+00', 0)");
        run("insert into payment (id, buyer, place_id, amount_minor) values ('" + payment + "', '" + NAME + "', '"
                + trestle.cash + "', 500)");
        program.getBean(patinary.ledger.Books.class).rederive();
        UUID draft = UUID.randomUUID();
        run(
                "insert into sales_draft (id, file_name, uploaded_at, encoding, delimiter, lead_in, has_header, each_row, sent)"
                        + " values ('" + draft
                        + "', 'a.csv', timestamp with time zone '2025-03-10 10:00:00+00', 'WINDOWS_1252', 'COMMA', 0,"
                        + " true, true, true)");
        byte[] file = ("Buyer,Price\n" + NAME + ",5").getBytes(Charset.forName("windows-1252"));
        int half = file.length - 8;
        for (int part = 0; part < 2; part++) {
            jdbc.sql("insert into sales_draft_part (draft_id, part, content) values (?, ?, ?)")
                    .params(
                            draft,
                            part,
                            part == 0
                                    ? java.util.Arrays.copyOf(file, half)
                                    : java.util.Arrays.copyOfRange(file, half, file.length))
                    .update();
        }
    }

    private void keepAddress(UUID of) {
        run("insert into sending (sale_id, picked_up, destination, size, tracking) values ('" + of
                + "', false, 'Invented Lane 4', '', 'TRACK-1')");
    }

    private void run(String sql) {
        jdbc.sql(sql).update();
    }

    private void erase(UUID of) throws Exception {
        mvc.perform(post("/buyers/" + of).with(owner()).param("sure", "true")).andExpect(status().is3xxRedirection());
    }

    /**
     * Every column of every table in which a text stands, whatever its case. A file that waits is in parts, and the name may stand
     * in two of them: there a few of its letters do.
     */
    private TreeSet<String> placesOf(String text) {
        TreeSet<String> found = new TreeSet<>();
        jdbc.sql("""
                        select lower(c.table_name) as table_name, lower(c.column_name) as column_name
                        from information_schema.columns c
                        join information_schema.tables t on t.table_schema = c.table_schema and t.table_name = c.table_name
                        where lower(c.table_schema) = 'public' and t.table_type = 'BASE TABLE'
                          and lower(c.table_name) <> 'flyway_schema_history'
                          and (lower(c.data_type) like '%char%' or lower(c.data_type) like '%text%'
                               or lower(c.data_type) like '%large object%')""").query().listOfRows().stream()
                .filter(column -> holds(column, text))
                .forEach(column -> found.add(column.get("table_name") + "." + column.get("column_name")));
        for (byte[] part : jdbc.sql("select content from sales_draft_part")
                .query(byte[].class)
                .list()) {
            if (new String(part, Charset.forName("windows-1252"))
                    .toLowerCase(Locale.ROOT)
                    .contains(text.substring(2, 5))) {
                found.add("sales_draft_part.content");
            }
        }
        return found;
    }

    private boolean holds(Map<String, Object> column, String text) {
        return jdbc.sql("select count(*) from " + column.get("table_name") + " where lower(cast("
                                + column.get("column_name") + " as varchar(8000))) like ?")
                        .param("%" + text + "%")
                        .query(Long.class)
                        .single()
                > 0;
    }

    private List<Map<String, Object>> postings() {
        return jdbc.sql("select * from posting order by document_id, line")
                .query()
                .listOfRows();
    }

    private String hash() {
        return jdbc.sql("select postings_hash from year_seal")
                .query(String.class)
                .single();
    }

    private long version(UUID document) {
        return jdbc.sql("select version from document where id = ?")
                .param(document)
                .query(Long.class)
                .single();
    }

    private UUID sell(String code, LocalDate day, String buyer, String order) throws Exception {
        UUID id = UUID.randomUUID();
        mvc.perform(post("/sales/new")
                        .with(owner())
                        .param("id", id.toString())
                        .param("date", day.toString())
                        .param("channel", trestle.stall.toString())
                        .param("buyer", buyer)
                        .param("order", order)
                        .param("lines[0].codes", code)
                        .param("lines[0].price", "20"))
                .andExpect(status().is3xxRedirection());
        return id;
    }

    private ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(owner())).andExpect(status().isOk());
    }
}
