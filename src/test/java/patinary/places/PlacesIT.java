package patinary.places;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** Where pieces are, and the page behind a label. */
@ShopTest
class PlacesIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    private Trestle trestle;
    private UUID tray;
    private UUID jug;

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        tray = trestle.offered("Tin tray", "Shelf A", 4500);
        jug = trestle.piece("Enamel jug", "Shelf A");
        trestle.piece("Oak box", "");
    }

    @Test
    void aScannedLabelShowsThePieceAndWhatCanBeDone() throws Exception {
        for (String address : new String[] {"/p/P0001", "/p/p1", "/p/1", "/p?code=p-0001"}) {
            page(address)
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("Tin tray")))
                    .andExpect(content().string(containsString("$45.00")))
                    .andExpect(content().string(containsString("Shelf A")))
                    .andExpect(content().string(containsString("/stall?piece=" + tray)))
                    .andExpect(content().string(containsString("/bench/now?piece=" + tray)))
                    .andExpect(content().string(containsString("/photos/new?of=" + tray)))
                    .andExpect(content().string(not(containsString("??"))));
        }
        page("/p/P0002").andExpect(content().string(containsString("/offers/new?pieces=P0002")));
    }

    @Test
    void anUnknownCodeIsSaidAndAnotherCanBeTyped() throws Exception {
        page("/p/P0099")
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("P0099")))
                .andExpect(content().string(containsString("name=\"code\"")));
        page("/p/<b>").andExpect(status().isNotFound()).andExpect(content().string(not(containsString("<b>"))));
        page("/p").andExpect(status().isOk());
        page("/p?code= ").andExpect(status().isOk());
    }

    @Test
    void signedOutItShowsNothingOfThePiece() throws Exception {
        mvc.perform(get("/p/P0001"))
                .andExpect(redirectedUrl("/sign-in"))
                .andExpect(content().string(not(containsString("Tin tray"))));
    }

    @Test
    void aPieceIsPutSomewhereFromItsPageAndTheHandReturnsThere() throws Exception {
        send(post("/places/move")
                        .param("pieces", tray.toString())
                        .param("from", "P0001")
                        .param("place", "shelf a"))
                .andExpect(redirectedUrl("/p?code=P0001"));
        assertThat(trestle.place(tray)).as("capitals make no second place").isEqualTo("Shelf A");
        send(post("/places/move").param("pieces", tray.toString()).param("place", ""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("aria-invalid=\"true\"")))
                .andExpect(content().string(containsString(tray.toString())));
    }

    @Test
    void manyPiecesAreMovedAtOnce() throws Exception {
        page("/places")
                .andExpect(content().string(containsString("Shelf A")))
                .andExpect(content().string(containsString("Place not said")));
        page("/places/one?place=Shelf A").andExpect(content().string(containsString("Enamel jug")));
        page("/places/one").andExpect(content().string(containsString("Oak box")));
        page("/places/move?place=Blue crate").andExpect(content().string(containsString("value=\"Blue crate\"")));
        send(post("/places/move").param("place", "Blue crate").param("codes", "p1, 2\nP0099"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("No piece has the code P0099")));
        send(post("/places/move").param("place", "Blue crate"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Choose at least one piece")));
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
        send(post("/places/move")
                        .param("place", "Blue crate")
                        .param("codes", "p1")
                        .param("pieces", jug.toString()))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/places/one?place=Blue+crate"));
        assertThat(trestle.place(tray)).isEqualTo("Blue crate");
        assertThat(trestle.place(jug)).isEqualTo("Blue crate");
        page("/pieces?place=Blue crate")
                .andExpect(content().string(containsString("Tin tray")))
                .andExpect(content().string(not(containsString("Oak box"))));
    }

    @Test
    void aPlaceGetsAnotherNameAndTwoBecomeOne() throws Exception {
        UUID stool = trestle.piece("Stool", "Loft");
        send(post("/places/rename").param("place", "Loft").param("name", " "))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Enter a name for the place")));
        send(post("/places/rename").param("place", "Loft").param("name", "LOFT"));
        assertThat(trestle.place(stool)).isEqualTo("LOFT");
        send(post("/places/rename").param("place", "LOFT").param("name", "shelf a"))
                .andExpect(redirectedUrl("/places"));
        assertThat(trestle.place(stool)).isEqualTo("Shelf A");
    }

    @Test
    void placesInUseAreOfferedWhereAPlaceIsTyped() throws Exception {
        page("/pieces/" + tray + "/edit").andExpect(content().string(containsString("<option value=\"Shelf A\"")));
        page("/p/1").andExpect(content().string(containsString("<option value=\"Shelf A\"")));
    }

    private ResultActions page(String address) throws Exception {
        return mvc.perform(get(address).with(InventedShop.owner()));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
