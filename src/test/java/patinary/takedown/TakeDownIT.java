package patinary.takedown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.pieces.LettingGo;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.Offer;
import patinary.shop.CurrentShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** What still stands where it can no longer be had. Pieces, stall and web shop are invented. */
@ShopTest
class TakeDownIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Books books;

    @Autowired
    private TakeDowns downs;

    @Autowired
    private CurrentShop shop;

    private Trestle trestle;
    private final UUID web = UUID.randomUUID();
    private UUID tray;
    private LocalDate today;

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        program.getBean(Channels.class).save(new Channel(web, "Web shop", trestle.cash, false, List.of()));
        tray = trestle.piece("Tin tray", "Box 1");
        today = shop.today();
    }

    @Test
    void whatIsSoldInOnePlaceStandsInTheOthersUntilSheSaysSo() throws Exception {
        UUID offer = offer("Tin tray", null, tray);
        assertThat(downs.due(true)).isEmpty();
        UUID sale = sell(today.minusDays(3));

        Standing standing = onlyOne();
        assertThat(standing.channel()).isEqualTo("Web shop");
        assertThat(standing.offers())
                .containsExactly(new Standing.Offer(offer, "Tin tray", true, today.minusDays(3), 3, 0));
        mvc.perform(get("/take-down").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("3 days ago")))
                .andExpect(content().string(not(containsString("??"))));

        say("/take-down/" + web + "/" + offer);
        assertThat(downs.due(true)).isEmpty();
        assertThat(downs.doneToday()).containsExactly(new TakeDowns.Done(offer, web, "Tin tray", "Web shop"));
        say("/take-down/" + web + "/" + offer + "/back");
        assertThat(onlyOne().offers()).hasSize(1);
        say("/take-down/" + web + "/all");
        assertThat(downs.due(true)).isEmpty();

        mvc.perform(post("/sales/" + sale + "/remove").with(owner()).param("version", "0"))
                .andExpect(status().is3xxRedirection());
        assertThat(downs.due(true)).as("it is on offer again").isEmpty();
        sell(today.minusDays(1));
        assertThat(onlyOne().offers())
                .as("what was said was said of the sale before")
                .hasSize(1);
    }

    @Test
    void whatIsWithdrawnOrGoneStandsEverywhere() {
        offer("Tin tray", today.minusDays(5), tray);
        UUID jug = trestle.piece("Enamel jug", "Box 1");
        offer("Enamel jug", null, jug);
        books.record(new LettingGo(UUID.randomUUID(), today.minusDays(2), "", jug, LettingGo.Reason.BROKEN));

        assertThat(downs.due(false)).extracting(Standing::channel).containsExactly("Stall", "Web shop");
        assertThat(downs.due(false))
                .allSatisfy(standing -> assertThat(standing.offers())
                        .extracting(Standing.Offer::title, Standing.Offer::sold, Standing.Offer::days)
                        .containsExactly(tuple("Tin tray", false, 5L), tuple("Enamel jug", false, 2L)));
    }

    @Test
    void aStallIsNotAskedAboutOnceSheSaysThatNothingStandsThere() throws Exception {
        offer("Tin tray", today.minusDays(5), tray);
        say("/take-down/" + trestle.stall + "/unlisted");
        assertThat(onlyOne().channel()).isEqualTo("Web shop");
        assertThat(downs.unlisted()).containsExactly(new TakeDowns.Unlisted(trestle.stall, "Stall"));
        say("/take-down/" + trestle.stall + "/listed");
        assertThat(downs.due(false)).hasSize(2);
    }

    @Test
    void theFirstLookIsNotAllOfHistory() throws Exception {
        offer("Tin tray", today.minusDays(TakeDowns.RECENT + 1), tray);
        assertThat(downs.due(false)).isEmpty();
        assertThat(downs.due(true)).hasSize(2);
        mvc.perform(get("/take-down").with(owner()))
                .andExpect(content().string(containsString("Nothing of the last 60 days")));
        mvc.perform(get("/take-down?older=true").with(owner()))
                .andExpect(content().string(containsString("Web shop")));
    }

    @Test
    void ofManyTheFirstAreShownAndAllCanBeSaid() throws Exception {
        int all = TakeDowns.SHOWN + 2;
        for (int each = 0; each < all; each++) {
            offer("Tin tray " + each, today.minusDays(5), trestle.piece("Tin tray " + each, "Box 1"));
        }
        Standing standing = downs.due(false).get(1);
        assertThat(standing.channel()).isEqualTo("Web shop");
        assertThat(standing.offers()).hasSize(TakeDowns.SHOWN);
        assertThat(standing.more()).isEqualTo(2);
        mvc.perform(get("/take-down").with(owner()))
                .andExpect(content().string(containsString("2 more come up as you say so of these.")))
                .andExpect(content().string(containsString("All 52 are down on Web shop")));

        say("/take-down/" + web + "/" + standing.offers().get(0).offerId());
        assertThat(downs.due(false).get(1).more()).isOne();
        say("/take-down/" + web + "/all");
        assertThat(downs.due(false)).extracting(Standing::channel).containsExactly("Stall");
        assertThat(downs.doneToday()).hasSize(all);
    }

    @Test
    void whatIsNotDueIsNotNotedDown() throws Exception {
        UUID offer = offer("Tin tray", null, tray);
        say("/take-down/" + web + "/" + offer);
        assertThat(jdbc.sql("select count(*) from offer_taken_down")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private Standing onlyOne() {
        List<Standing> due = downs.due(false);
        assertThat(due).hasSize(1);
        return due.get(0);
    }

    private void say(String path) throws Exception {
        mvc.perform(post(path).with(owner())).andExpect(status().is3xxRedirection());
    }

    private UUID sell(LocalDate day) throws Exception {
        UUID id = UUID.randomUUID();
        mvc.perform(post("/sales/new")
                        .with(owner())
                        .param("id", id.toString())
                        .param("date", day.toString())
                        .param("channel", trestle.stall.toString())
                        .param("lines[0].codes", "P0001")
                        .param("lines[0].price", "20"))
                .andExpect(status().is3xxRedirection());
        return id;
    }

    private UUID offer(String title, @Nullable LocalDate ended, UUID piece) {
        UUID id = UUID.randomUUID();
        books.record(new Offer(
                id,
                new Offer.Content(
                        Trestle.DAY,
                        "",
                        title,
                        null,
                        ended,
                        List.of(new Offer.OfferedPiece(piece, BigDecimal.ONE)),
                        List.of(trestle.stall, web),
                        List.of(new Offer.Price(Trestle.DAY, Amount.of(2000))),
                        List.of())));
        return id;
    }
}
