package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.ledger.Check;
import patinary.money.Amount;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.taxyear.YearSeal;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** The cash box through a market day, from the float to the count. Amounts are those of the handbook's worked example. */
@ShopTest
@ExtendWith(Browser.class)
class TillIT {

    private static final String DAY = "2025-03-08";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private Books books;

    @Autowired
    private Check check;

    @Autowired
    private JdbcClient jdbc;

    private final UUID box = UUID.randomUUID();
    private final UUID bank = UUID.randomUUID();

    @BeforeEach
    void floatAndTakings() {
        places.save(new MoneyPlace(box, "Stall box", MoneyPlace.Kind.CASH));
        places.save(new MoneyPlace(bank, "Bank", MoneyPlace.Kind.BANK));
        books.record(new MoneyMove(UUID.randomUUID(), LocalDate.parse(DAY), "Float", bank, box, Amount.of(5_000)));
        books.record(
                new OtherIncome(UUID.randomUUID(), LocalDate.parse(DAY), "", "Lessons", "", box, Amount.of(6_050)));
    }

    @Test
    void aCountPostsTheDifferenceAndFollowsWhatIsTypedInLater() throws Exception {
        mvc.perform(get("/till-counts/new?placeId=" + box + "&date=" + DAY).with(owner()))
                .andExpect(content().string(containsString("$110.50")))
                .andExpect(content().string(not(containsString("??"))));
        UUID count = UUID.randomUUID();
        send(count(post("/till-counts/new"), count).param("counted", "108.00")).andExpect(redirectedUrl("/till"));
        send(count(post("/till-counts/new"), count).param("counted", "108.00")).andExpect(redirectedUrl("/till"));
        assertThat(held(box)).isEqualTo(10_800);
        assertThat(difference(count)).isEqualTo(-250);
        mvc.perform(get("/till").with(owner())).andExpect(content().string(containsString("$2.50 short")));
        mvc.perform(get("/expenses").with(owner())).andExpect(content().string(containsString("Cash count, short")));

        books.record(new Expense(
                UUID.randomUUID(), LocalDate.parse(DAY), "Typed in late", "other", "", box, Amount.of(250)));

        assertThat(difference(count)).isZero();
        assertThat(held(box)).isEqualTo(10_800);
        assertThat(check.run()).isEmpty();
    }

    @Test
    void notesAndCoinsAreAddedUpAndMustAgreeWithTheTotal() throws Exception {
        UUID count = UUID.randomUUID();
        MockHttpServletRequestBuilder heaps = count(post("/till-counts/new"), count)
                .param("heaps[0].minor", "2000")
                .param("heaps[0].number", "5")
                .param("heaps[1].minor", "25")
                .param("heaps[1].number", "34");
        send(heaps.param("counted", "100"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("come to 108.50")))
                .andExpect(content().string(containsString("value=\"34\"")));
        send(count(post("/till-counts/new"), count)
                        .param("heaps[0].minor", "2000")
                        .param("heaps[0].number", "5")
                        .param("heaps[1].minor", "25")
                        .param("heaps[1].number", "34"))
                .andExpect(redirectedUrl("/till"));
        assertThat(held(box)).isEqualTo(10_850);
        send(count(post("/till-counts/new"), UUID.randomUUID()))
                .andExpect(content().string(containsString("counted on that day already")))
                .andExpect(content().string(containsString("what is in the box")));
    }

    @Test
    void aCountIsChangedAndRemovedLikeAnyDocumentUntilItsYearIsSealed() throws Exception {
        UUID count = UUID.randomUUID();
        send(count(post("/till-counts/new"), count).param("counted", "108.00"));
        mvc.perform(get("/till-counts/" + count).with(owner()))
                .andExpect(content().string(containsString("value=\"108.00\"")));
        send(count(post("/till-counts/" + count), count).param("counted", "111").param("version", "0"))
                .andExpect(redirectedUrl("/till"));
        assertThat(difference(count)).isEqualTo(50);
        UUID seal = UUID.randomUUID();
        books.record(new YearSeal(seal, LocalDate.of(2025, 12, 31), "", 2025, "", 1));
        send(count(post("/till-counts/" + count), count).param("counted", "112").param("version", "1"))
                .andExpect(status().isUnprocessableContent());
        assertThat(difference(count)).isEqualTo(50);
        jdbc.sql("delete from sealed_posting").update();
        jdbc.sql("delete from year_seal").update();
        jdbc.sql("delete from document where id = ?").param(seal).update();
        send(post("/till-counts/" + count + "/remove")).andExpect(redirectedUrl("/till"));
        assertThat(held(box)).isEqualTo(11_050);
    }

    @Test
    void countingIsSeenAndAddedUpOnThePhone(Browser.Visit visit) {
        visit.signIn();
        visit.open("/till");
        visit.look("till");
        Page page = visit.open("/till-counts/new?placeId=" + box + "&date=" + DAY);
        page.getByLabel("$20.00").fill("5");
        page.getByLabel("$0.25").fill("34");
        assertThat(page.locator("[data-till-says]").textContent())
                .contains("108.50")
                .contains("2.00 short");
        visit.look("till-count");
        page.locator("button.main").click();
        assertThat(page.locator("main").textContent()).contains("$2.00 short");
        visit.look("till-counted");
    }

    private MockHttpServletRequestBuilder count(MockHttpServletRequestBuilder request, UUID id) {
        return request.param("id", id.toString()).param("date", DAY).param("placeId", box.toString());
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(owner()));
    }

    private long held(UUID place) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from money_left where place_id = ?")
                .param(place)
                .query(Long.class)
                .single();
    }

    private long difference(UUID count) {
        return jdbc.sql(
                        "select coalesce(sum(amount_minor), 0) from posting where document_id = ? and account = 'MONEY'")
                .param(count)
                .query(Long.class)
                .single();
    }
}
