package patinary.shelflife;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.ledger.Books;
import patinary.ledger.StockPlace;
import patinary.supplies.SupplyCount;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** The days of lots, from the page to the hints. */
@ShopTest
class KeepingIT {

    private static final LocalDate MARCH = LocalDate.of(2025, 3, 1);
    private static final LocalDate APRIL = LocalDate.of(2025, 4, 1);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc web;

    @Autowired
    private Lots lots;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;
    private UUID first = new UUID(0, 0);

    /** Two lots of 200 ml; 250 ml are left by a count. */
    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        first = bench.paintFor("20.00", MARCH);
        bench.paintFor("24.00", APRIL);
        program.getBean(Books.class)
                .record(new SupplyCount(
                        UUID.randomUUID(),
                        APRIL.plusDays(1),
                        "",
                        bench.paint,
                        StockPlace.BENCH,
                        BigDecimal.valueOf(250)));
    }

    @Test
    void theOldestWentFirst() {
        assertThat(lots.of(bench.paint))
                .extracting(lot -> lot.leftQuantity().stripTrailingZeros().toPlainString())
                .containsExactly("50", "200");
    }

    @Test
    void theDaysOfALotAreKeptAndHintedAt() throws Exception {
        jdbc.sql("insert into supply_limit (supply_id, days_opened, most_note) values (?, 30, '')")
                .param(bench.paint)
                .update();
        web.perform(post("/supplies/" + bench.paint + "/lots")
                        .with(InventedShop.owner())
                        .with(csrf())
                        .param("lots[0].document", first.toString())
                        .param("lots[0].opened", "2025-03-05")
                        .param("lots[0].useBy", ""))
                .andExpect(status().is3xxRedirection());
        Lot oldest = lots.of(bench.paint).get(0);
        assertThat(oldest.best()).contains(LocalDate.of(2025, 4, 4));
        for (String path : List.of("/supplies/" + bench.paint, "/bench/new")) {
            assertThat(page(path)).contains("2 lots are there", "past its day");
        }
        assertThat(page("/supplies/shelf-life")).contains("Pond green", "past its day");
        assertThat(page("/supplies/" + bench.paint + "/lots")).contains("value=\"2025-03-05\"");
    }

    @Test
    void aDayStillToComeIsRefused() throws Exception {
        web.perform(post("/supplies/" + bench.paint + "/lots")
                        .with(InventedShop.owner())
                        .with(csrf())
                        .param("lots[0].document", first.toString())
                        .param("lots[0].opened", "2199-01-01"))
                .andExpect(status().is(422));
        assertThat(lots.of(bench.paint)).allMatch(lot -> lot.openedOn() == null);
    }

    private String page(String path) throws Exception {
        return web.perform(get(path).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
