package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.buying.LineKind;
import patinary.ledger.Check;
import patinary.measure.Dimension;
import patinary.money.Percent;
import patinary.supplies.Limits;
import patinary.supplies.Motif;
import patinary.supplies.SheetSize;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Cuts and pots of a bench entry, from the form to the books. */
@ShopTest
class HandlingIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc web;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    private StockedBench bench;
    private final UUID sheet = UUID.randomUUID();
    private final UUID grip = UUID.randomUUID();

    /** 200 ml of paint for 20.00; one sheet of 30 x 60 cm with a rose of 10 x 15 cm for 18.00; 100 ml of grip for 10.00. */
    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        Supplies supplies = program.getBean(Supplies.class);
        supplies.save(new Supply(
                sheet,
                new Supply.Facts(bench.line, "Wild garden sheet", Dimension.AREA, null, null, List.of(), List.of())
                        .with(
                                new SheetSize(BigDecimal.valueOf(30), BigDecimal.valueOf(60)),
                                List.of(new Motif("rose", BigDecimal.TEN, BigDecimal.valueOf(15))),
                                Limits.NONE)));
        supplies.save(new Supply(
                grip,
                new Supply.Facts(bench.line, "Grip", Dimension.VOLUME, null, null, List.of(), List.of())
                        .with(null, List.of(), new Limits(30, 14, Percent.of("50"), "an invented label"))));
        bench.paintFor("20.00", StockedBench.DAY);
        bench.receipt(LineKind.SUPPLY, sheet, BigDecimal.valueOf(1800), "18.00", StockedBench.DAY);
        bench.receipt(LineKind.SUPPLY, grip, BigDecimal.valueOf(100), "10.00", StockedBench.DAY);
    }

    /** 10 x 15 cm twice are 3.00, 10 x 20 cm are 2.00, a third of the sheet is 6.00: 11.00 over two pieces. */
    @Test
    void cutsCostByTheirArea() throws Exception {
        UUID id = UUID.randomUUID();
        web.perform(entry("/bench/new", id)
                        .param("handling.cuts[0].what", sheet + "|rose")
                        .param("handling.cuts[0].times", "2")
                        .param("handling.cuts[1].what", sheet.toString())
                        .param("handling.cuts[1].quantity", "10 x 20 cm")
                        .param("handling.cuts[2].what", sheet.toString())
                        .param("handling.cuts[2].quantity", "1/3"))
                .andExpect(status().is3xxRedirection());
        assertThat(bench.landed()).containsEntry("Small box", 550L).containsEntry("Long crate", 550L);
        String form = page("/bench/" + id + "/edit");
        assertThat(form).contains(sheet + "|rose", "10 x 20 cm", "1/3");
        assertThat(check.run()).isEmpty();
    }

    @Test
    void aCutLargerThanItsSheetIsRefusedBesideTheField() throws Exception {
        web.perform(entry("/bench/new", UUID.randomUUID())
                        .param("handling.cuts[0].what", sheet.toString())
                        .param("handling.cuts[0].quantity", "40 x 40 cm"))
                .andExpect(status().is(422))
                .andExpect(
                        content().string(org.hamcrest.Matchers.containsString("Larger than the sheet of 30 x 60 cm")));
    }

    /**
     * 100 ml of paint for 10.00 and 20 ml of water: 120 ml. 30 ml go with 15 ml of grip (1.50) into a cup for the crate;
     * 30 ml are kept, 20 ml thrown away. Kept: 2.50. Crate: 2.50 and 1.50. Box: the rest, 5.00.
     */
    @Test
    void aPotIsSharedByVolumeAndWhatIsKeptIsASupply() throws Exception {
        UUID id = UUID.randomUUID();
        UUID kept = UUID.randomUUID();
        web.perform(pot(entry("/bench/new", id), kept)).andExpect(status().is3xxRedirection());
        assertThat(bench.landed()).containsEntry("Small box", 500L).containsEntry("Long crate", 400L);
        assertThat(cost(kept)).isEqualTo(250);
        String shown = page("/bench/" + id);
        assertThat(shown)
                .contains("Use by", "Grip", "30 ml kept as", "with $2.50 of the cost", "Made 120 ml", "20 ml of water");
        assertThat(page("/supplies/" + kept)).contains("mixed");

        UUID later = UUID.randomUUID();
        web.perform(post("/bench/new")
                        .with(InventedShop.owner())
                        .with(csrf())
                        .param("id", later.toString())
                        .param("day", "TODAY")
                        .param("pieces", bench.box.toString())
                        .param("uses[0].supply", kept.toString())
                        .param("uses[0].quantity", "15 ml")
                        .param("uses[0].how", "EXACT")
                        .param("uses[0].share", "EQUAL"))
                .andExpect(status().is3xxRedirection());
        assertThat(bench.landed()).containsEntry("Small box", 625L);
        assertThat(cost(kept)).isEqualTo(125);
        assertThat(check.run()).isEmpty();
        keptStaysWhileItIsUsed(id, kept);
    }

    private void keptStaysWhileItIsUsed(UUID id, UUID kept) throws Exception {
        web.perform(post("/bench/" + id + "/remove").with(InventedShop.owner()).with(csrf()));
        assertThat(cost(kept)).isEqualTo(125);
        long version = jdbc.sql("select version from document where id = ?")
                .param(id)
                .query(Long.class)
                .single();
        web.perform(entry("/bench/" + id + "/edit", id)
                        .param("version", String.valueOf(version))
                        .param("minutes", "5"))
                .andExpect(status().is(422))
                .andExpect(content().string(org.hamcrest.Matchers.containsString("is used elsewhere")));
    }

    /** The paint turns out to have cost 40.00: everything made of the pot doubles, back to the day it was used. */
    @Test
    void aReceiptThatWasWrongChangesTheKeptPot() throws Exception {
        UUID kept = UUID.randomUUID();
        web.perform(pot(entry("/bench/new", UUID.randomUUID()), kept)).andExpect(status().is3xxRedirection());
        bench.paintFor("80.00", StockedBench.DAY.minusDays(1));
        assertThat(cost(kept)).isEqualTo(1000);
        assertThat(check.run()).isEmpty();
    }

    @Test
    void aPotThatNobodyUsedGoesWithItsEntry() throws Exception {
        UUID id = UUID.randomUUID();
        UUID kept = UUID.randomUUID();
        web.perform(pot(entry("/bench/new", id), kept)).andExpect(status().is3xxRedirection());
        assertThat(page("/bench/" + id + "/edit")).contains(kept.toString(), "value=\"30 ml\"");
        web.perform(post("/bench/" + id + "/remove").with(InventedShop.owner()).with(csrf()));
        web.perform(get("/supplies/" + kept).with(InventedShop.owner())).andExpect(status().isNotFound());
        assertThat(check.run()).isEmpty();
    }

    /** 20 ml of grip in 30 ml of paint are two thirds; the label allows half. It is written down, and pointed out. */
    @Test
    void tooMuchAdditiveIsPointedOut() throws Exception {
        UUID id = UUID.randomUUID();
        web.perform(entry("/bench/new", id)
                        .param("handling.pots[0].inside[0].supply", bench.paint.toString())
                        .param("handling.pots[0].inside[0].quantity", "30 ml")
                        .param("handling.pots[0].inside[1].supply", grip.toString())
                        .param("handling.pots[0].inside[1].quantity", "20 ml"))
                .andExpect(status().is3xxRedirection());
        assertThat(page("/bench/" + id)).contains("66.7% of the paint, at most 50%", "an invented label");
    }

    @Test
    void whatCannotBeIsRefused() throws Exception {
        String answer = web.perform(entry("/bench/new", UUID.randomUUID())
                        .param("handling.pots[0].inside[0].supply", bench.paint.toString())
                        .param("handling.pots[0].inside[0].quantity", "30 ml")
                        .param("handling.pots[0].rest", "20 ml")
                        .param("handling.pots[1].from", "1")
                        .param("handling.pots[1].poured", "20 ml"))
                .andExpect(status().is(422))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(answer).contains("More was poured off, kept and thrown away than the pot made");
        assertThat(bench.balance("PIECES")).isZero();
    }

    private MockHttpServletRequestBuilder pot(MockHttpServletRequestBuilder entry, UUID kept) {
        return entry.param("handling.pots[0].inside[0].supply", bench.paint.toString())
                .param("handling.pots[0].inside[0].quantity", "100 ml")
                .param("handling.pots[0].water", "20 ml")
                .param("handling.pots[0].only", bench.box.toString())
                .param("handling.pots[0].rest", "1/4")
                .param("handling.pots[0].then", "KEPT")
                .param("handling.pots[0].useBy", "2025-04-01")
                .param("handling.pots[0].keptAs", kept.toString())
                .param("handling.pots[1].from", "1")
                .param("handling.pots[1].poured", "30 ml")
                .param("handling.pots[1].inside[0].supply", grip.toString())
                .param("handling.pots[1].inside[0].quantity", "15 ml")
                .param("handling.pots[1].only", bench.crate.toString());
    }

    private MockHttpServletRequestBuilder entry(String path, UUID id) {
        return post(path)
                .with(InventedShop.owner())
                .with(csrf())
                .param("id", id.toString())
                .param("day", "OTHER")
                .param("date", StockedBench.DAY.plusDays(1).toString())
                .param("pieces", bench.box.toString(), bench.crate.toString());
    }

    private String page(String path) throws Exception {
        return web.perform(get(path).with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replace('\u00a0', ' ');
    }

    private long cost(UUID supply) {
        return jdbc.sql("select cost_minor from stock_left where supply_id = ? and place = 'BENCH'")
                .param(supply)
                .query(Long.class)
                .single();
    }
}
