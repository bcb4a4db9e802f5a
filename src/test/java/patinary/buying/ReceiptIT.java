package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Receipts from the form to the postings. */
@ShopTest
class ReceiptIT {

    private static final UUID ID = UUID.fromString("00000000-0000-4000-8000-00000000d001");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @BeforeEach
    void fill() {
        Shelf.fill(jdbc);
    }

    /** Derived by hand: lines of 86.00 less 8.60, tax 5 % on the remaining 77.40 is 3.87, donation 0.73: 82.00. */
    @Test
    void recordsLinesOfAllSixKinds() throws Exception {
        mvc.perform(mixed().param("tillTotal", "82.00"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/receipts/" + ID));
        assertThat(balance()).isZero();
        assertThat(account("MONEY")).isEqualTo(-8200);
        assertThat(account("PIECES")).isEqualTo(3780);
        assertThat(account("BENCH") + account("SHELF") + account("EXPENSE"))
                .isEqualTo(8200 - 3780 - account("OWNER_OUT"));
        assertThat(count("select count(*) from piece")).isEqualTo(3);
        assertThat(number("select sum(quantity) from posting where account = 'BENCH'"))
                .isEqualTo(500);
        mvc.perform(get("/receipts/" + ID).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Jars of white")))
                .andExpect(content().string(containsString("P0003")));
        mvc.perform(get("/receipts?q=wicker&kind=CHARITY&year=2025&source=" + Shelf.SOURCE)
                        .with(InventedShop.owner()))
                .andExpect(content().string(containsString("82.00")));
    }

    @Test
    void saysAChargesNameUnlessItIsCalledWhatItIs() throws Exception {
        mvc.perform(mixed().param("tillTotal", "82.00")
                        .param("charges[0].title", "Blue tag day")
                        .param("charges[1].title", "Sales tax"))
                .andExpect(status().isSeeOther());
        String page = mvc.perform(get("/receipts/" + ID).with(InventedShop.owner()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " "))
                .contains("Discount Blue tag day 10%", "Sales tax 5%")
                .doesNotContain("Sales tax Sales tax");
    }

    @Test
    void refusesATotalThatDoesNotAgreeAndKeepsWhatWasTyped() throws Exception {
        mvc.perform(mixed().param("tillTotal", "82.05"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Wicker chairs")))
                .andExpect(content().string(containsString("82.05")))
                .andExpect(content().string(containsString("The total does not agree")))
                .andExpect(content().string(containsString("settle-rounding")));
        assertThat(count("select count(*) from document")).isZero();
        assertThat(count("select count(*) from piece")).isZero();
    }

    @Test
    void settlesTheDifferenceAsSheSays() throws Exception {
        mvc.perform(mixed().param("tillTotal", "82.05").param("action", "settle-rounding"))
                .andExpect(status().isSeeOther());
        assertThat(account("ROUNDING")).isEqualTo(5);
        assertThat(account("MONEY")).isEqualTo(-8205);
        mvc.perform(get("/receipts/" + ID + "/edit").with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("82.05")));
    }

    @Test
    void recordsTheSameReceiptOnce() throws Exception {
        for (int time = 0; time < 2; time++) {
            mvc.perform(mixed().param("tillTotal", "82.00")).andExpect(redirectedUrl("/receipts/" + ID));
        }
        assertThat(count("select count(*) from receipt")).isEqualTo(1);
        assertThat(count("select count(*) from piece")).isEqualTo(3);
    }

    @Test
    void keepsPiecesAndDerivesAnewWhenChanged() throws Exception {
        mvc.perform(simple("/receipts", "30.00").param("lines[0].pieceCount", "2"));
        List<UUID> pieces = pieces();
        mvc.perform(simple("/receipts/" + ID, "40.00")
                        .param("version", version())
                        .param("lines[0].pieces[0].id", pieces.get(0).toString())
                        .param("lines[0].pieces[0].title", "Tall chair")
                        .param("lines[0].pieces[0].value", "30")
                        .param("lines[0].pieces[1].id", pieces.get(1).toString())
                        .param("lines[0].pieces[1].value", "10"))
                .andExpect(status().isSeeOther());
        assertThat(pieces()).containsExactlyElementsOf(pieces);
        assertThat(account("PIECES")).isEqualTo(4000);
        assertThat(count("select amount_minor from posting where account = 'PIECES' and piece_id = '" + pieces.get(0)
                        + "'"))
                .isEqualTo(3000);
        assertThat(balance()).isZero();
    }

    @Test
    void refusesAChangeMadeFromAnOldPage() throws Exception {
        mvc.perform(simple("/receipts", "30.00"));
        String old = version();
        mvc.perform(simple("/receipts/" + ID, "31.00").param("version", old)).andExpect(status().isSeeOther());
        mvc.perform(simple("/receipts/" + ID, "32.00").param("version", old)).andExpect(status().isConflict());
        assertThat(account("MONEY")).isEqualTo(-3100);
    }

    @Test
    void refusesKindlyToTakeAwayAPieceThatWasWorkedOn() throws Exception {
        mvc.perform(simple("/receipts", "30.00").param("lines[0].pieceCount", "2"));
        List<UUID> pieces = pieces();
        offer(pieces.get(1));
        mvc.perform(simple("/receipts/" + ID, "30.00")
                        .param("version", version())
                        .param("lines[0].pieces[0].id", pieces.get(0).toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("stays on this receipt")));
        assertThat(pieces()).hasSize(2);
        mvc.perform(post("/receipts/" + ID + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/receipts/" + ID));
        assertThat(account("PIECES")).isEqualTo(3000);
    }

    @Test
    void removesAReceiptWithItsPieces() throws Exception {
        mvc.perform(simple("/receipts", "30.00"));
        mvc.perform(get("/receipts/" + ID + "/remove").with(InventedShop.owner()))
                .andExpect(content().string(containsString("Remove this receipt?")));
        mvc.perform(post("/receipts/" + ID + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/receipts"));
        assertThat(count("select count(*) from posting")).isZero();
        assertThat(count("select count(*) from piece")).isZero();
        assertThat(count("select count(*) from document")).isZero();
    }

    @Test
    void redrawsTheFormForItsSmallButtonsAndSavesNothing() throws Exception {
        mvc.perform(simple("/receipts", "30.00").param("action", "add-line"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Oak chair")))
                .andExpect(content().string(containsString("lines[1].title")));
        mvc.perform(simple("/receipts", "30.00")
                        .param("lines[0].pieceCount", "3")
                        .param("action", "add-piece:0"))
                .andExpect(content().string(containsString("lines[0].pieces[2].value")));
        assertThat(count("select count(*) from document")).isZero();
    }

    @Test
    void takesAGiftForNothingAndHerOwnStashAsAContribution() throws Exception {
        mvc.perform(simple("/receipts", "0")).andExpect(status().isSeeOther());
        assertThat(count("select count(*) from posting")).isZero();
        UUID other = UUID.randomUUID();
        mvc.perform(receipt("/receipts", other, "OWNER", "Old lamp", "12.00")).andExpect(status().isSeeOther());
        assertThat(account("OWNER_IN")).isEqualTo(-1200);
        assertThat(account("PIECES")).isEqualTo(1200);
    }

    @Test
    void addsASourceByItsName() throws Exception {
        mvc.perform(simple("/receipts", "30.00").param("newSource", "Ferry Street yard"))
                .andExpect(status().isSeeOther());
        assertThat(count("select count(*) from receipt r join source s on s.id = r.source_id"
                        + " where s.name = 'Ferry Street yard'"))
                .isEqualTo(1);
    }

    @Test
    void asksForWhatIsMissing() throws Exception {
        mvc.perform(post("/receipts").with(InventedShop.owner()).param("id", ID.toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Enter at least one line")));
        mvc.perform(simple("/receipts", "30.00").param("date", "2024-12-31")).andExpect(status().is(422));
    }

    private MockHttpServletRequestBuilder mixed() {
        MockHttpServletRequestBuilder request = post("/receipts")
                .with(InventedShop.owner())
                .param("id", ID.toString())
                .param("date", "2025-03-04")
                .param("source", Shelf.SOURCE.toString())
                .param("paidWith", Shelf.CASH.toString());
        line(request, 0, "PIECES", "Wicker chairs", "40.00", "1").param("lines[0].pieceCount", "3");
        line(request, 1, "SUPPLY", "Jars of white", "10.00", "2").param("lines[1].supply", Shelf.PAINT + "/jar");
        line(request, 2, "SHELF", "Small white", "6.00", "1")
                .param("lines[2].supply", Shelf.PAINT.toString())
                .param("lines[2].content", "100 ml");
        line(request, 3, "EXPENSE", "Pencils", "5.00", "1").param("lines[3].category", "office");
        line(request, 4, "HOME", "Bread", "15.00", "1");
        line(request, 5, "CHARITY", "Round-up", "0.73", "1");
        return request.param("charges[0].kind", "DISCOUNT")
                .param("charges[0].value", "10%")
                .param("charges[1].kind", "TAX")
                .param("charges[1].value", "5%");
    }

    private MockHttpServletRequestBuilder simple(String path, String price) {
        return receipt(path, ID, Shelf.CASH.toString(), "Oak chair", price);
    }

    private MockHttpServletRequestBuilder receipt(String path, UUID id, String paidWith, String title, String price) {
        MockHttpServletRequestBuilder request = post(path)
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("date", "2025-03-04")
                .param("paidWith", paidWith)
                .param("tillTotal", price);
        return line(request, 0, "PIECES", title, price, "1");
    }

    private static MockHttpServletRequestBuilder line(
            MockHttpServletRequestBuilder request, int at, String kind, String title, String price, String quantity) {
        String line = "lines[" + at + "].";
        return request.param(line + "kind", kind)
                .param(line + "title", title)
                .param(line + "price", price)
                .param(line + "quantity", quantity);
    }

    /** Puts a piece up for sale, as another part of the program does. */
    private void offer(UUID piece) {
        UUID offer = UUID.randomUUID();
        jdbc.sql(
                        "insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version)"
                                + " select cast(? as uuid), 'OFFER', ?, doc_date, '', recorded_at, 0 from document where id = ?")
                .params(offer, patinary.ledger.DocumentKind.OFFER.ordinal(), ID)
                .update();
        jdbc.sql("insert into offer (id, title) values (?, 'Chair')")
                .param(offer)
                .update();
        jdbc.sql("insert into offer_piece (offer_id, piece_id, weight) values (?, ?, 1)")
                .params(offer, piece)
                .update();
    }

    private String version() {
        return String.valueOf(count("select version from document where id = '" + ID + "'"));
    }

    private List<UUID> pieces() {
        return jdbc.sql("select p.id from piece p order by p.code")
                .query(UUID.class)
                .list();
    }

    private long balance() {
        return count("select coalesce(sum(amount_minor), 0) from posting");
    }

    private long account(String account) {
        return count("select coalesce(sum(amount_minor), 0) from posting where account = '" + account + "'");
    }

    private long number(String sql) {
        return jdbc.sql(sql).query(java.math.BigDecimal.class).single().longValueExact();
    }

    private long count(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
