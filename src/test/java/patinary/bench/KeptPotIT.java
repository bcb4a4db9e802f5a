package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.UUID;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Check;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** A pot that was kept, as the other pages see it: not to be bought or sold, and waiting while something in it waits. */
@ShopTest
class KeptPotIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc web;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    private StockedBench bench;
    private final UUID kept = UUID.randomUUID();
    private final UUID mixing = UUID.randomUUID();
    private final UUID later = UUID.randomUUID();

    /** 100 ml of paint that is not bought yet on the box, 40 ml of it kept; 10 ml of these on the crate the day after. */
    @BeforeEach
    void mix() throws Exception {
        bench = new StockedBench(program);
        web.perform(entry(mixing, StockedBench.DAY.plusDays(1), bench.box)
                        .param("handling.pots[0].inside[0].supply", bench.paint.toString())
                        .param("handling.pots[0].inside[0].quantity", "100 ml")
                        .param("handling.pots[0].rest", "40 ml")
                        .param("handling.pots[0].then", "KEPT")
                        .param("handling.pots[0].keptAs", kept.toString()))
                .andExpect(status().is3xxRedirection());
        web.perform(entry(later, StockedBench.DAY.plusDays(2), bench.crate)
                        .param("uses[0].supply", kept.toString())
                        .param("uses[0].quantity", "10 ml")
                        .param("uses[0].how", "EXACT")
                        .param("uses[0].share", "EQUAL"))
                .andExpect(status().is3xxRedirection());
    }

    @Test
    void nobodySellsIt() throws Exception {
        jdbc.sql("update supply set retail_price_minor = 500, low_quantity = 100 where id = ?")
                .param(kept)
                .update();
        assertThat(page("/receipts/new")).contains(bench.paint.toString()).doesNotContain(kept.toString());
        assertThat(page("/supplier-returns/new"))
                .contains(bench.paint.toString())
                .doesNotContain(kept.toString());
        assertThat(page("/buying-list")).contains(bench.paint.toString()).doesNotContain(kept.toString());
        assertThat(page("/sales/new")).doesNotContain(kept.toString());
        assertThat(page("/supplies/shelf")).doesNotContain(kept.toString());
    }

    @Test
    void aReceiptThatNamesItIsRefused() throws Exception {
        web.perform(post("/receipts")
                        .with(InventedShop.owner())
                        .with(csrf())
                        .param("id", UUID.randomUUID().toString())
                        .param("lines[0].kind", "SUPPLY")
                        .param("lines[0].title", "a pot")
                        .param("lines[0].quantity", "1")
                        .param("lines[0].price", "5")
                        .param("lines[0].supply", kept.toString())
                        .param("lines[0].content", "10 ml"))
                .andExpect(status().is(422))
                .andExpect(content().string(Matchers.containsString("was mixed at the bench, not bought")));
    }

    /** 200 ml for 20.00: 6.00 on the box, 4.00 kept, of which a quarter on the crate. */
    @Test
    void whatIsPaintedFromItWaitsForTheCostOfWhatIsInIt() throws Exception {
        String card = piece(bench.crate);
        assertThat(card).contains("not yet costed", "Their cost is added once their receipt is recorded");
        assertThat(page("/bench/" + later)).contains("Not yet costed");
        assertThat(page("/bench").split("Not yet costed", -1)).hasSize(3);
        assertThat(waiting("Long crate")).isTrue();
        assertThat(page("/supplies/" + kept)).doesNotContain("Not yet costed</span>");
        assertThat(check.run()).isEmpty();

        bench.paintFor("20.00", StockedBench.DAY.plusDays(3));
        assertThat(piece(bench.crate)).doesNotContain("not yet costed", "Their cost is added once");
        assertThat(page("/bench/" + later)).doesNotContain("Not yet costed");
        assertThat(page("/bench")).doesNotContain("Not yet costed");
        assertThat(waiting("Long crate")).isFalse();
        assertThat(bench.landed()).containsEntry("Small box", 600L).containsEntry("Long crate", 100L);
        assertThat(check.run()).isEmpty();
    }

    private boolean waiting(String title) {
        return jdbc.sql("select f.uncosted from piece_figures f join piece p on p.id = f.piece_id where p.title = ?")
                .param(title)
                .query(Boolean.class)
                .single();
    }

    private String piece(UUID piece) throws Exception {
        return page("/pieces/" + piece);
    }

    private MockHttpServletRequestBuilder entry(UUID id, LocalDate day, UUID piece) {
        return post("/bench/new")
                .with(InventedShop.owner())
                .with(csrf())
                .param("id", id.toString())
                .param("day", "OTHER")
                .param("date", day.toString())
                .param("pieces", piece.toString());
    }

    private String page(String path) throws Exception {
        return web.perform(get(path).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replace('\u00a0', ' ');
    }
}
