package patinary.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Objects;
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

/** An invented market day, from the list to what came home. */
@ShopTest
class PackingIT {

    private static final String MARKET = "Lantern fair";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    private Trestle trestle;
    private UUID tray;
    private UUID jug;
    private UUID box;
    private String list = "";

    @BeforeEach
    void stock() throws Exception {
        trestle = new Trestle(program);
        tray = trestle.offered("Tin tray", "Shelf A", 4500);
        jug = trestle.offered("Enamel jug", "Blue crate", 1250);
        box = trestle.piece("Oak box", "Loft");
        list = started();
    }

    private String started() throws Exception {
        page("/market-days").andExpect(content().string(containsString("No market day yet")));
        page("/market-days/new").andExpect(content().string(containsString(trestle.stall.toString())));
        send(post("/market-days/new").param("title", "").param("day", "soon").param("note", "Pitch 7"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Pitch 7")))
                .andExpect(content().string(containsString("value=\"soon\"")));
        send(post("/market-days/new")
                        .param("title", MARKET)
                        .param("day", "2025-05-03")
                        .param("channel", UUID.randomUUID().toString()))
                .andExpect(status().isUnprocessableContent());
        String next = Objects.requireNonNull(send(post("/market-days/new")
                        .param("title", MARKET)
                        .param("day", "2025-05-03")
                        .param("channel", trestle.stall.toString()))
                .andExpect(status().isSeeOther())
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
        assertThat(next).endsWith("/add");
        return next.replace("/add", "");
    }

    @Test
    void piecesArePutOnTheListByATickOrTheirCode() throws Exception {
        page(list + "/add")
                .andExpect(content().string(containsString("Tin tray")))
                .andExpect(content().string(containsString("Enamel jug")))
                .andExpect(content().string(not(containsString("Oak box"))));
        page(list + "/add?place=Shelf A").andExpect(content().string(not(containsString("Enamel jug"))));
        send(post(list + "/add").param("pieces", tray.toString()).param("codes", "P0099"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("No piece has the code P0099")))
                .andExpect(content().string(containsString("checked")));
        send(post(list + "/add"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Choose at least one piece")));
        add("p3");
        page(list)
                .andExpect(content().string(containsString("Tin tray")))
                .andExpect(content().string(containsString("Oak box")))
                .andExpect(content().string(containsString("0 of 2")));
        add("p3");
        page(list).andExpect(content().string(containsString("0 of 2")));
        turn(box, "leave");
        page(list).andExpect(content().string(not(containsString("Oak box"))));
    }

    /** 45.00 and 12.50 are asked, 57.50 together; in change for notes of 20: 15.00 and 7.50. */
    @Test
    void whatIsPackedIsAtTheMarketAndComesBackToItsPlace() throws Exception {
        add("p2, p3");
        turn(tray, "pack");
        turn(tray, "pack");
        turn(jug, "pack");
        assertThat(trestle.place(tray)).isEqualTo(MARKET);
        page(list)
                .andExpect(content().string(containsString("2 of 3")))
                .andExpect(content().string(containsString("$57.50")))
                .andExpect(content().string(containsString("$22.50")))
                .andExpect(content().string(not(containsString("??"))));
        turn(jug, "unpack");
        assertThat(trestle.place(jug)).isEqualTo("Blue crate");
        turn(tray, "home");
        turn(tray, "home");
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
        turn(tray, "not-home");
        assertThat(trestle.place(tray)).isEqualTo(MARKET);
        turn(tray, "home");
        turn(tray, "unpack");
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
    }

    @Test
    void whatWasSoldFollowsFromTheSales() throws Exception {
        add("p2");
        turn(tray, "pack");
        turn(jug, "pack");
        send(post("/stall")
                        .param("id", UUID.randomUUID().toString())
                        .param("codes", "P0001")
                        .param("price", "40")
                        .param("channel", trestle.stall.toString())
                        .param("place", trestle.cash.toString())
                        .param("date", "2025-05-03"))
                .andExpect(status().isSeeOther());
        page(list)
                .andExpect(content().string(containsString("Sold for")))
                .andExpect(content().string(containsString("$40.00")))
                .andExpect(content().string(containsString("$12.50")))
                .andExpect(content().string(not(containsString(tray + "/home"))));
        page("/market-days").andExpect(content().string(containsString("2 of 2")));
        page("/p/P0001").andExpect(content().string(containsString("/sales/")));
    }

    @Test
    void aListIsChangedAndTakenAwayOnceNothingIsPacked() throws Exception {
        add("p2");
        turn(tray, "pack");
        page(list + "/edit").andExpect(content().string(containsString("value=\"2025-05-03\"")));
        send(post(list + "/edit").param("title", "").param("day", "2025-05-04"))
                .andExpect(status().isUnprocessableContent());
        send(post(list + "/edit").param("title", "Night fair").param("day", "2025-05-04"))
                .andExpect(redirectedUrl(list));
        page(list).andExpect(content().string(containsString("Night fair")));
        send(post(list + "/remove")).andExpect(redirectedUrl(list));
        turn(tray, "unpack");
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
        send(post(list + "/remove")).andExpect(redirectedUrl("/market-days"));
        page(list).andExpect(status().isNotFound());
        send(post(list + "/edit").param("title", "Night fair").param("day", "2025-05-04"))
                .andExpect(status().isNotFound());
        send(post(list + "/pieces/" + tray + "/pack")).andExpect(status().isNotFound());
        assertThat(trestle.place(tray)).isEqualTo("Shelf A");
    }

    private void add(String codes) throws Exception {
        send(post(list + "/add").param("pieces", tray.toString()).param("codes", codes))
                .andExpect(redirectedUrl(list));
    }

    private void turn(UUID piece, String turn) throws Exception {
        send(post(list + "/pieces/" + piece + "/" + turn)).andExpect(redirectedUrl(list + "#piece-" + piece));
    }

    private ResultActions page(String address) throws Exception {
        return mvc.perform(get(address).with(InventedShop.owner()));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
