package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Finding pieces, saying what they are, and her own lists. */
@ShopTest
class PiecePagesIT {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theListFindsByWordsAndStateAndShowsTheStateInWords() throws Exception {
        UUID box = newPieces.create("Oak box", null, null);
        UUID tray = newPieces.create("Tin tray, 100%", null, null);
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        books.record(FoundBoxes.bought(DAY, 700, null, tray));
        books.record(new LettingGo(UUID.randomUUID(), DAY.plusDays(1), "", tray, LettingGo.Reason.BROKEN));

        see(get("/pieces"), "Oak box", "Tin tray", "P0001", "found", "let go", "$10.00");
        see(get("/pieces").param("q", "oak"), "Oak box").andExpect(content().string(not(containsString("Tin tray"))));
        see(get("/pieces").param("q", "100%"), "Tin tray").andExpect(content().string(not(containsString("Oak box"))));
        see(get("/pieces").param("state", "GONE"), "Tin tray")
                .andExpect(content().string(not(containsString("Oak box"))));
        see(get("/pieces").param("q", "walnut"), "No piece is like that", "<details class=\"sift\">");
        see(get("/pieces").param("sort", "CODE"), "<details class=\"sift\" open=\"open\">");
        for (PieceQuery.Sort sort : PieceQuery.Sort.values()) {
            see(get("/pieces").param("sort", sort.name()), "Oak box", "Tin tray");
        }
    }

    @Test
    void aPieceIsChangedWithANewKindByNameAndASurfaceInInches() throws Exception {
        UUID box = newPieces.create("Oak box", null, null);

        mvc.perform(change(box, "B-7", "10 x 20 in").param("newKind", "Box").param("tags", "oak, gift, oak"))
                .andExpect(status().isSeeOther());

        assertThat(jdbc.sql("select area_cm2 from piece where id = ?")
                        .param(box)
                        .query(BigDecimal.class)
                        .single())
                // 200 in² × 2.54² = 1290.32 cm², NIST SP 811
                .isEqualByComparingTo("1290.32");
        see(get("/pieces/" + box), "B-7", "Box", "gift, oak", "1290.32 sq cm");
        see(get("/pieces/kinds"), "Box");
        UUID kind = jdbc.sql("select id from object_kind").query(UUID.class).single();
        see(get("/pieces").param("kind", kind.toString()), "Oak box");
        see(get("/pieces").param("q", "GIFT"), "Oak box");
    }

    @Test
    void aCodeIsBorneByOnePieceOnly() throws Exception {
        newPieces.create("Oak box", null, null);
        UUID tray = newPieces.create("Tin tray", null, null);

        mvc.perform(change(tray, "p0001", ""))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Another piece has the code p0001")));
        assertThat(jdbc.sql("select code from piece where id = ?")
                        .param(tray)
                        .query(String.class)
                        .single())
                .isEqualTo("P0002");
    }

    @Test
    void whatCannotBeReadIsSaidBesideTheFieldAndKept() throws Exception {
        UUID box = newPieces.create("Oak box", null, null);

        mvc.perform(change(box, "", "a hand"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Enter a short code")))
                .andExpect(content().string(containsString("value=\"a hand\"")));
    }

    @Test
    void aChangeFromAnOldWindowIsNotSavedOverANewerOne() throws Exception {
        UUID box = newPieces.create("Oak box", null, null);
        mvc.perform(change(box, "B-1", "")).andExpect(status().isSeeOther());

        mvc.perform(change(box, "B-2", "")).andExpect(status().isConflict());
    }

    @Test
    void aNameIsAddedRenamedAndTakenOffOnlyWhileUnused() throws Exception {
        mvc.perform(as(post("/pieces/styles").param("name", "Sea glass"))).andExpect(status().isSeeOther());
        mvc.perform(as(post("/pieces/styles").param("name", "sea GLASS")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("on the list already")));
        UUID style = jdbc.sql("select id from style").query(UUID.class).single();
        mvc.perform(as(post("/pieces/styles/" + style)
                        .param("name", "Lake glass")
                        .param("version", "0")))
                .andExpect(status().isSeeOther());
        see(get("/pieces/styles"), "Lake glass");
        UUID box = newPieces.create("Oak box", null, style);

        mvc.perform(as(post("/pieces/styles/" + style + "/remove"))).andExpect(status().isSeeOther());
        see(get("/pieces/styles/" + style), "Pieces with this name: 1");

        jdbc.sql("delete from piece where id = ?").param(box).update();
        mvc.perform(as(post("/pieces/styles/" + style + "/remove"))).andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select count(*) from style").query(Long.class).single())
                .isZero();
    }

    @Test
    void anUnknownPieceIsAFriendlyPage() throws Exception {
        mvc.perform(as(get("/pieces/" + UUID.randomUUID()))).andExpect(status().isNotFound());
        mvc.perform(as(get("/pieces/nonsense"))).andExpect(status().isNotFound());
    }

    private MockHttpServletRequestBuilder change(UUID piece, String code, String area) {
        return as(post("/pieces/" + piece + "/edit")
                .param("version", "0")
                .param("code", code)
                .param("title", "Oak box")
                .param("area", area));
    }

    private org.springframework.test.web.servlet.ResultActions see(
            MockHttpServletRequestBuilder request, String... words) throws Exception {
        var page = mvc.perform(as(request)).andExpect(status().isOk());
        for (String word : words) {
            page.andExpect(content().string(containsString(word)));
        }
        return page;
    }

    private static MockHttpServletRequestBuilder as(MockHttpServletRequestBuilder request) {
        return request.with(InventedShop.owner());
    }
}
