package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What is paid later, what goes back, and where it was bought. */
@ShopTest
class ReturnsAndBillsIT {

    private static final UUID RECEIPT = UUID.fromString("00000000-0000-4000-8000-00000000d001");
    private static final UUID BILL = UUID.fromString("00000000-0000-4000-8000-00000000d002");
    private static final UUID RETURN = UUID.fromString("00000000-0000-4000-8000-00000000d003");
    private static final UUID OTHER = UUID.fromString("00000000-0000-4000-8000-00000000d004");
    private static final String NOT_OWED = "Less to pay is possible only from a receipt";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @BeforeEach
    void fill() throws Exception {
        Shelf.fill(jdbc);
        mvc.perform(post("/receipts")
                        .with(InventedShop.owner())
                        .param("id", RECEIPT.toString())
                        .param("date", "2025-03-04")
                        .param("source", Shelf.SOURCE.toString())
                        .param("paidWith", "OWED")
                        .param("tillTotal", "50.00")
                        .param("lines[0].kind", "PIECES")
                        .param("lines[0].title", "Oak chair")
                        .param("lines[0].price", "30.00")
                        .param("lines[0].quantity", "1")
                        .param("lines[1].kind", "SUPPLY")
                        .param("lines[1].supply", Shelf.PAINT + "/jar")
                        .param("lines[1].price", "20.00")
                        .param("lines[1].quantity", "1"))
                .andExpect(status().isSeeOther());
    }

    @Test
    void paysWhatIsOwedInParts() throws Exception {
        mvc.perform(get("/bills").with(InventedShop.owner()))
                .andExpect(content().string(containsString("50.00")));
        pay(BILL, "20.00").andExpect(redirectedUrl("/bills"));
        pay(BILL, "20.00").andExpect(redirectedUrl("/bills"));
        assertThat(owed()).isEqualTo(3000);
        pay(UUID.randomUUID(), "30.01")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Only 30.00 is owed")));
        pay(UUID.randomUUID(), "30.00").andExpect(redirectedUrl("/bills"));
        assertThat(owed()).isZero();
        assertThat(account("MONEY")).isEqualTo(-5000);
        mvc.perform(get("/receipts/" + RECEIPT + "/pay").with(InventedShop.owner()))
                .andExpect(status().isNotFound());
        mvc.perform(get("/bills").with(InventedShop.owner()))
                .andExpect(content().string(containsString("Nothing is owed.")));
    }

    /** The form's own field has the same name as the receipt's in the address. */
    @Test
    void aFormThatLostItsIdIsNotThatOfTheReceipt() throws Exception {
        mvc.perform(post("/receipts/" + RECEIPT + "/pay")
                        .with(InventedShop.owner())
                        .param("date", "2025-03-20")
                        .param("amount", "20.00")
                        .param("place", Shelf.CASH.toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("The form is damaged")));
    }

    @Test
    void keepsAReceiptThatABillWasPaidFor() throws Exception {
        pay(BILL, "20.00");
        mvc.perform(post("/receipts/" + RECEIPT + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/receipts/" + RECEIPT));
        assertThat(account("PAYABLE")).isEqualTo(-3000);
        mvc.perform(post("/bills/" + BILL + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/bills"));
        assertThat(owed()).isEqualTo(5000);
    }

    /** Derived by hand: a chair of 30.00 and a fifth of a jar of 20.00 go back for 32.00: 2.00 are lost. */
    @Test
    void sendsPiecesAndSuppliesBackForStoreCredit() throws Exception {
        for (int time = 0; time < 2; time++) {
            mvc.perform(post("/supplier-returns")
                            .with(InventedShop.owner())
                            .param("id", RETURN.toString())
                            .param("receipt", RECEIPT.toString())
                            .param("date", "2025-03-10")
                            .param("source", Shelf.SOURCE.toString())
                            .param("pieces", piece().toString())
                            .param("supplies[0].supply", Shelf.PAINT.toString())
                            .param("supplies[0].place", "BENCH")
                            .param("supplies[0].quantity", "50 ml")
                            .param("amount", "32.00")
                            .param("way", "STORE_CREDIT"))
                    .andExpect(redirectedUrl("/supplier-returns/" + RETURN));
        }
        assertThat(account("PIECES")).isZero();
        assertThat(account("BENCH")).isEqualTo(1600);
        assertThat(account("WRITE_OFFS")).isEqualTo(200);
        assertThat(account("STORE_CREDIT_HELD")).isEqualTo(3200);
        assertThat(jdbc.sql("select quantity from stock_left where place = 'BENCH'")
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("200");
        mvc.perform(get("/sources").with(InventedShop.owner()))
                .andExpect(content().string(containsString("32.00")));
        mvc.perform(get("/supplier-returns/" + RETURN).with(InventedShop.owner()))
                .andExpect(status().isOk());
        mvc.perform(post("/supplier-returns/" + RETURN + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/supplier-returns"));
        assertThat(account("PIECES")).isEqualTo(3000);
    }

    /** Derived by hand: of 50.00 owed the chair of 30.00 comes off; what is owed for another receipt stays. */
    @Test
    void takesAReturnOffWhatIsOwedForItsReceipt() throws Exception {
        mvc.perform(post("/receipts")
                        .with(InventedShop.owner())
                        .param("id", OTHER.toString())
                        .param("date", "2025-03-05")
                        .param("source", Shelf.SOURCE.toString())
                        .param("paidWith", "OWED")
                        .param("tillTotal", "7.00")
                        .param("lines[0].kind", "HOME")
                        .param("lines[0].title", "Jigsaw")
                        .param("lines[0].price", "7.00")
                        .param("lines[0].quantity", "1"))
                .andExpect(status().isSeeOther());
        for (int time = 0; time < 2; time++) {
            lessOwed(RETURN, RECEIPT.toString(), "30.00").andExpect(redirectedUrl("/supplier-returns/" + RETURN));
        }
        assertThat(owed(RECEIPT)).isEqualTo(2000);
        assertThat(owed(OTHER)).isEqualTo(700);
        assertThat(owed()).isEqualTo(2700);
        pay(UUID.randomUUID(), "20.01").andExpect(status().is(422));
        pay(UUID.randomUUID(), "20.00").andExpect(redirectedUrl("/bills"));
        assertThat(owed(RECEIPT)).isZero();
        mvc.perform(post("/supplier-returns/" + RETURN + "/remove").with(InventedShop.owner()));
        assertThat(owed(RECEIPT)).isEqualTo(3000);
    }

    @Test
    void refusesLessToPayWhereNotSoMuchIsOwed() throws Exception {
        lessOwed(RETURN, "", "30.00")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString(NOT_OWED)));
        lessOwed(RETURN, UUID.randomUUID().toString(), "30.00")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString(NOT_OWED)));
        lessOwed(RETURN, RECEIPT.toString(), "50.01")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("amount-error")))
                .andExpect(content().string(containsString("Only 50.00 is owed")))
                .andExpect(content().string(containsString("value=\"" + RECEIPT + "\"")));
        assertThat(owed()).isEqualTo(5000);
        assertThat(account("PIECES")).isEqualTo(3000);
    }

    @Test
    void asksWhatWentBackAndHow() throws Exception {
        mvc.perform(get("/supplier-returns/new?receipt=" + RECEIPT).with(InventedShop.owner()))
                .andExpect(content().string(containsString("Oak chair")));
        mvc.perform(post("/supplier-returns")
                        .with(InventedShop.owner())
                        .param("id", RETURN.toString())
                        .param("date", "2025-03-10")
                        .param("amount", "1"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Choose how you got it back")))
                .andExpect(content().string(containsString("Tick a piece")));
    }

    @Test
    void removesASourceOnlyWhileNothingNamesIt() throws Exception {
        mvc.perform(post("/sources/" + Shelf.SOURCE + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/sources/" + Shelf.SOURCE));
        mvc.perform(post("/sources").with(InventedShop.owner()).param("name", "Mill Lane hall"))
                .andExpect(redirectedUrl("/sources"));
        mvc.perform(post("/sources").with(InventedShop.owner()).param("name", "mill lane hall"))
                .andExpect(status().is(422));
        UUID added = jdbc.sql("select id from source where name = 'Mill Lane hall'")
                .query(UUID.class)
                .single();
        mvc.perform(get("/sources/" + added).with(InventedShop.owner())).andExpect(status().isOk());
        mvc.perform(post("/sources/" + added + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/sources"));
        assertThat(jdbc.sql("select count(*) from source").query(Long.class).single())
                .isEqualTo(1);
    }

    private org.springframework.test.web.servlet.ResultActions pay(UUID id, String amount) throws Exception {
        return mvc.perform(post("/receipts/" + RECEIPT + "/pay")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("date", "2025-03-20")
                .param("amount", amount)
                .param("place", Shelf.CASH.toString()));
    }

    private org.springframework.test.web.servlet.ResultActions lessOwed(UUID id, String receipt, String amount)
            throws Exception {
        return mvc.perform(post("/supplier-returns")
                .with(InventedShop.owner())
                .param("id", id.toString())
                .param("receipt", receipt)
                .param("date", "2025-03-10")
                .param("source", Shelf.SOURCE.toString())
                .param("pieces", piece().toString())
                .param("amount", amount)
                .param("way", "OWED"));
    }

    private UUID piece() {
        return jdbc.sql("select id from piece").query(UUID.class).single();
    }

    private long owed() {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from owed_by_shop")
                .query(Long.class)
                .single();
    }

    private long owed(UUID receipt) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from owed_by_shop where receipt_id = ?")
                .param(receipt)
                .query(Long.class)
                .single();
    }

    private long account(String account) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where account = ?")
                .param(account)
                .query(Long.class)
                .single();
    }
}
