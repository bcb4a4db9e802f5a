package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** A form in which pieces are ticked offers some, and finds the others by words without losing what was ticked or typed. */
@ShopTest
class PiecesAtHandIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private PiecesAtHand atHand;

    @Autowired
    private JdbcClient jdbc;

    private UUID lid;
    private UUID box;

    @BeforeEach
    void fill() {
        lid = newPieces.create("Lid 100% tin", null, null);
        box = newPieces.create("Box", null, null);
        for (int i = 0; i < PiecesAtHand.SHOWN; i++) {
            newPieces.create("Jar " + i, null, null);
        }
    }

    @Test
    void noMoreAreOfferedThanCanBeLookedThrough() {
        PiecesAtHand.Offer offer = atHand.offer(new PiecePicks(), null);
        assertThat(offer.others())
                .hasSize(PiecesAtHand.SHOWN)
                .isSortedAccordingTo(Comparator.comparing(PiecesAtHand.Row::code));
        assertThat(offer.more()).isTrue();
        assertThat(titles(offer)).as("the first are the longest unchanged").doesNotContain("Box");
    }

    @Test
    void whereAllFitNothingHasToBeFound() throws Exception {
        jdbc.sql("delete from piece_state where piece_id in (select id from piece where title like 'Jar%')")
                .update();
        PiecesAtHand.Offer offer = atHand.offer(new PiecePicks(), null);
        assertThat(titles(offer)).containsExactly("Lid 100% tin", "Box");
        assertThat(offer.more()).isFalse();
        see(get("/pieces/join")).andExpect(content().string(not(containsString("name=\"pieceWords\""))));
    }

    @Test
    void wordsMeanWhatTheySay() {
        PiecePicks picks = new PiecePicks();
        picks.pieceWords = " 0% T";
        assertThat(titles(atHand.offer(picks, null))).containsExactly("Lid 100% tin");
        picks.pieceWords = "p0002";
        assertThat(titles(atHand.offer(picks, null))).containsExactly("Box");
    }

    @Test
    void whatIsTickedStaysWhileOthersAreFound() throws Exception {
        String page = see(join("find")
                        .param("pieces", box.toString())
                        .param("pieceWords", "lid")
                        .param("title", "Box with lid"))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .containsPattern("id=\"piece-" + box + "\"[^>]* checked")
                .contains("id=\"piece-" + lid)
                .contains("value=\"Box with lid\"")
                .doesNotContain("Jar 7");
        assertThat(regroupings()).isZero();
    }

    @Test
    void theEnterKeyInTheSearchFindsAndDoesNotSave() throws Exception {
        see(join("enter")
                        .param("pieces", box.toString())
                        .param("pieceWords", "lid")
                        .param("title", "Box with lid"))
                .andExpect(content().string(containsString("id=\"piece-" + lid)));
        assertThat(regroupings()).isZero();

        mvc.perform(join("save")
                        .param("pieces", box.toString(), lid.toString())
                        .param("pieceWords", "lid")
                        .param("foundBy", "lid")
                        .param("title", "Box with lid"))
                .andExpect(status().isSeeOther());
        assertThat(regroupings()).isOne();
    }

    @Test
    void whatGoesBackIsFoundTheSameWay() throws Exception {
        see(get("/supplier-returns/new")).andExpect(content().string(not(containsString("id=\"piece-" + lid))));
        see(post("/supplier-returns")
                        .with(InventedShop.owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("action", "find")
                        .param("pieceWords", "lid")
                        .param("amount", "2.00"))
                .andExpect(content().string(containsString("id=\"piece-" + lid)))
                .andExpect(content().string(containsString("value=\"2.00\"")));
        see(post("/supplier-returns")
                        .with(InventedShop.owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("action", "find")
                        .param("pieceWords", "no such thing"))
                .andExpect(content().string(containsString("Nothing else fits")));
    }

    private static List<String> titles(PiecesAtHand.Offer offer) {
        return offer.others().stream().map(PiecesAtHand.Row::title).toList();
    }

    private MockHttpServletRequestBuilder join(String action) {
        return post("/pieces/join")
                .with(InventedShop.owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-03-05")
                .param("action", action);
    }

    private ResultActions see(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner())).andExpect(status().isOk());
    }

    private long regroupings() {
        return jdbc.sql("select count(*) from regrouping").query(Long.class).single();
    }
}
