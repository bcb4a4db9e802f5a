package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;
import patinary.web.Page;
import patinary.web.Window;

/** Several like pieces sold one by one, and sets that are weighed, sold in part and taken apart. Goods are invented. */
@ShopTest
class AlikeOffersIT {

    private static final LocalDate DAY = Trestle.DAY.plusDays(1);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private OfferList offers;

    private Trestle trestle;
    private final UUID form = UUID.randomUUID();

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        for (int i = 1; i <= 3; i++) {
            trestle.piece("Bauble " + i, "Box 1");
        }
    }

    @Test
    void likePiecesAreSoldOneByOne() throws Exception {
        typed("ALIKE", "P0001 P0002 P0003").andExpect(status().is3xxRedirection());
        typed("ALIKE", "P0001 P0002 P0003").andExpect(status().is3xxRedirection());
        assertThat(offers.alike(form)).as("a form sent twice").hasSize(2);

        sell("P0002");
        assertThat(states()).containsExactly("LIVE", "LIVE", "SOLD");
        mvc.perform(get("/offers/" + form).with(owner()))
                .andExpect(content().string(containsString("2 of 3 are left.")));
        mvc.perform(get("/offers").with(owner()))
                .andExpect(content().string(containsString("and 1 more alike")))
                .andExpect(content().string(not(containsString("??"))));
    }

    @Test
    void aGroupIsOneRowForEachStateHoweverTheListIsNarrowedOrPaged() throws Exception {
        trestle.piece("Lamp", "Box 1");
        typed("ALIKE", "P0001 P0002 P0003");
        sell("P0002");
        trestle.offered("Clock", "Box 1", 900);
        mvc.perform(offer(UUID.randomUUID(), "SET", "P0004")).andExpect(status().is3xxRedirection());

        List<OfferList.Row> all = rows("", "", 1, 50);
        assertThat(all).hasSize(4);
        assertThat(all).filteredOn(row -> row.alike() == 2).singleElement().satisfies(row -> {
            assertThat(row.state()).isEqualTo("LIVE");
            assertThat(row.codes()).isIn("P0001", "P0003");
        });
        assertThat(all)
                .filteredOn(row -> row.state().equals("SOLD"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.codes()).isEqualTo("P0002");
                    assertThat(row.alike()).isEqualTo(1);
                });
        // One of the group alone is found, even where another of it stands for them all elsewhere.
        for (String code : List.of("P0001", "P0003")) {
            assertThat(rows(code, "", 1, 50)).singleElement().satisfies(row -> {
                assertThat(row.codes()).isEqualTo(code);
                assertThat(row.alike()).isEqualTo(1);
            });
        }
        assertThat(rows("", "LIVE", 1, 50)).hasSize(3);
        assertThat(List.of(1, 2, 3, 4))
                .flatExtracting(page -> rows("", "", page, 1))
                .extracting(OfferList.Row::offerId)
                .containsExactlyInAnyOrderElementsOf(
                        all.stream().map(OfferList.Row::offerId).toList());
    }

    private List<OfferList.Row> rows(String words, String state, int page, int size) {
        Page<OfferList.Row> found = offers.page(new OfferList.Search(words, "", "", state), new Window(page, size));
        assertThat(found.total()).isGreaterThanOrEqualTo(found.rows().size());
        return found.rows();
    }

    @Test
    void aStepIsTakenByThoseThatAreLeftOrByOneAlone() throws Exception {
        typed("ALIKE", "P0001 P0002 P0003");
        sell("P0003");
        step("price", "20", true);
        assertThat(prices()).containsExactly(2000L, 2000L, 2400L);
        step("price", "18", false);
        assertThat(prices()).containsExactly(1800L, 2000L, 2400L);
        step("withdraw", "", true);
        assertThat(states()).containsExactly("ENDED", "ENDED", "SOLD");
    }

    @Test
    void moreOfTheSameJoinsWhatStoodAlone() throws Exception {
        typed("SET", "P0001");
        mvc.perform(get("/offers/" + form + "/like").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Bauble")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(offer(UUID.randomUUID(), "ALIKE", "P0002 P0003").param("like", form.toString()))
                .andExpect(status().is3xxRedirection());
        assertThat(offers.alike(form)).hasSize(2);
    }

    @Test
    void aSetIsWeighedByWhatIsInItsPieces() throws Exception {
        mvc.perform(offer(form, "SET", "P0001 P0002").param("act", "by-cost"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"4.00 4.00\"")));
        mvc.perform(offer(form, "SET", "P0001 P0002").param("act", "by-asked"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("P0001, P0002 was never on offer alone")));
        mvc.perform(offer(UUID.randomUUID(), "ALIKE", "P0001 P0002"));
        mvc.perform(offer(form, "SET", "P0001 P0002").param("act", "by-asked"))
                .andExpect(content().string(containsString("value=\"24.00 24.00\"")));
    }

    @Test
    void whatIsLeftOfASetIsOfferedAnew() throws Exception {
        typed("SET", "P0001 P0002 P0003").andExpect(status().is3xxRedirection());
        mvc.perform(get("/offers/" + form).with(owner()))
                .andExpect(content().string(not(containsString("Sold without the rest"))));
        sell("P0002");
        mvc.perform(get("/offers/" + form).with(owner()))
                .andExpect(content().string(containsString("P0001 P0003 is left")))
                .andExpect(content().string(containsString("price=16.00")));
    }

    @Test
    void aSetIsTakenApart() throws Exception {
        typed("SET", "P0001 P0002 P0003");
        mvc.perform(get("/offers/" + form + "/split").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"8.00\"")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(split("abc"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("value=\"abc\"")));
        assertThat(states()).as("nothing is half done").containsExactly("LIVE");
        mvc.perform(split("12.50")).andExpect(status().is3xxRedirection());
        assertThat(jdbc.sql("select title from offer o join document d on d.id = o.id where d.doc_date = ?")
                        .param(DAY.plusDays(4))
                        .query(String.class)
                        .list())
                .containsExactlyInAnyOrder("Bauble 1", "Bauble 3");
        assertThat(jdbc.sql("select ended_on from offer where id = ?")
                        .param(form)
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(DAY.plusDays(3));
    }

    private MockHttpServletRequestBuilder split(String price) {
        return post("/offers/" + form + "/split")
                .with(owner())
                .param("version", "0")
                .param("date", DAY.plusDays(4).toString())
                .param("parts[0].piece", piece("P0001"))
                .param("parts[0].price", price)
                .param("parts[1].piece", piece("P0002"))
                .param("parts[1].price", "")
                .param("parts[2].piece", piece("P0003"))
                .param("parts[2].price", "9");
    }

    private String piece(String code) {
        return jdbc.sql("select id from piece where code = ?")
                .param(code)
                .query(UUID.class)
                .single()
                .toString();
    }

    private ResultActions typed(String together, String codes) throws Exception {
        return mvc.perform(offer(form, together, codes));
    }

    private MockHttpServletRequestBuilder offer(UUID id, String together, String codes) {
        return post("/offers/new")
                .with(owner())
                .param("id", id.toString())
                .param("date", DAY.toString())
                .param("codes", codes)
                .param("together", together)
                .param("title", "Bauble")
                .param("price", "24")
                .param("channels", trestle.stall.toString());
    }

    private void sell(String code) throws Exception {
        mvc.perform(post("/sales/new")
                        .with(owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("date", DAY.plusDays(2).toString())
                        .param("channel", trestle.stall.toString())
                        .param("lines[0].codes", code)
                        .param("lines[0].price", "24"))
                .andExpect(status().is3xxRedirection());
    }

    private void step(String act, String price, boolean others) throws Exception {
        long version = jdbc.sql("select version from document where id = ?")
                .param(form)
                .query(Long.class)
                .single();
        MockHttpServletRequestBuilder step = post("/offers/" + form)
                .with(owner())
                .param("version", String.valueOf(version))
                .param("act", act)
                .param("date", DAY.plusDays(3).toString())
                .param("price", price);
        mvc.perform(others ? step.param("others", "true") : step).andExpect(status().is3xxRedirection());
    }

    /** Of all offers, in the order of the words. */
    private List<String> states() {
        return jdbc.sql("select state from offer_state order by state")
                .query(String.class)
                .list();
    }

    private List<Long> prices() {
        return jdbc.sql("""
                        select (select pr.price_minor from offer_price pr where pr.offer_id = op.offer_id
                                order by pr.valid_from desc fetch first 1 row only) as price
                        from offer_piece op join piece p on p.id = op.piece_id order by p.code""").query(Long.class).list();
    }
}
