package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.testing.ShopTest;

/** What to pay, on the demo shop's stored rows. Everything is invented. */
@ShopTest
class WhatToPayIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private Outcomes outcomes;

    @Autowired
    private AdviceList list;

    @Test
    void anEmptyShopIsToldSo() throws Exception {
        mvc.perform(get("/moves/what-to-pay").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Nothing has been offered")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void everyPieceThatTellsSomethingIsCountedOnce() throws Exception {
        demo();
        List<PayRow> rows = outcomes.whatToPay();
        Pool whole = rows.get(0).pool();
        assertThat(whole.pieces())
                .isEqualTo(jdbc.sql("select count(*) from piece_outcome")
                        .query(Long.class)
                        .single());
        assertThat(whole.net().count())
                .as("pieces of other people tell nothing of what to pay")
                .isEqualTo(jdbc.sql("select count(*) from piece_state where state = 'SOLD'"
                                + " and piece_id not in (select piece_id from piece_owner)")
                        .query(Long.class)
                        .single());
        assertThat(whole.net().sum())
                .isEqualByComparingTo(jdbc.sql("""
                        select sum(sales_minor + shipping_minor - refunds_minor - fees_minor - postage_minor
                                   - packaging_minor)
                        from piece_figures
                        where sold_on is not null and piece_id not in (select piece_id from piece_owner)""").query(BigDecimal.class).single());
        assertThat(whole.tries().sold()).isLessThanOrEqualTo(whole.tries().pieces());
        assertThat(rows.get(0).budget()).isNotNull();
        assertThat(rows)
                .as("the invented shop shows kinds that are worth buying and kinds that are not")
                .filteredOn(row -> row.group().kindId() != null && row.group().styleId() == null)
                .anyMatch(row -> row.most() != null)
                .anyMatch(row -> row.most() == null);
        mvc.perform(get("/moves/what-to-pay?row=1").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Chance that it sells within 150 days")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/moves/what-to-pay.csv").with(owner())).andExpect(status().isOk());
        assertThat(list.rows()).hasSameSizeAs(rows);
        assertThat(list.rows().get(0).pieces()).isNull();
        assertThat(list.rows().get(1).pieces()).isEqualTo(rows.get(1).pool().pieces());
    }

    @Test
    void whatSheAimsAtIsKeptAndUsed() throws Exception {
        demo();
        aim("0", "0.00");
        long before = rowMost();
        aim("1", "1.00");
        assertThat(rowMost()).isEqualTo(before - 100);
        mvc.perform(post("/shop/aims")
                        .with(owner())
                        .with(csrf())
                        .param("version", "2")
                        .param("horizonDays", "0"))
                .andExpect(status().isUnprocessableEntity());
    }

    /** Without tax on what she buys, so that a target lowers the price by itself. */
    private void aim(String version, String target) throws Exception {
        mvc.perform(post("/shop/aims")
                        .with(owner())
                        .with(csrf())
                        .param("version", version)
                        .param("horizonDays", "180")
                        .param("targetKind", "AMOUNT")
                        .param("target", target)
                        .param("priceEndings", ".00 .95"))
                .andExpect(status().isSeeOther());
    }

    private long rowMost() {
        return outcomes.whatToPay().get(0).budget().most().minor();
    }

    private void demo() throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
    }
}
