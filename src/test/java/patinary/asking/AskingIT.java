package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultMatcher;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.money.Amount;
import patinary.selling.OfferPrices;
import patinary.shop.CurrentShop;
import patinary.testing.ShopTest;

/** What to ask, mark-downs and fees that are due, on the demo shop's stored rows. Everything is invented. */
@ShopTest
class AskingIT {

    private static final ResultMatcher COMPLETE = content().string(not(containsString("??")));

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private MarkDowns downs;

    @Autowired
    private MarkDownPlan plan;

    @Autowired
    private ChannelCharges charges;

    @Autowired
    private ChannelRules channels;

    @Autowired
    private OfferPrices prices;

    @Autowired
    private CurrentShop shop;

    @BeforeEach
    void demo() throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        jdbc.sql("delete from channel_charge").update();
        jdbc.sql("delete from mark_down_step").update();
        jdbc.sql("update channel_fee set offer_minor = null, month_minor = null")
                .update();
    }

    /** One after another, as bringing in the shop takes longest. */
    @Test
    void aPriceIsNamedAndRulesOfOldStay() throws Exception {
        aPriceIsWorkedOutForAPieceAndASetAndGoesIntoTheForm();
        whatRemainsIsShownOnTheChannelAndWhatIsUsualIsKept();
        aMarkDownIsSuggestedTakenAndTakenBack();
        feesThatAreDueBecomeExpensesAndAreDueAgainWithoutThem();
        anotherRuleDoesNotAlterOldSales();
    }

    private void aPriceIsWorkedOutForAPieceAndASetAndGoesIntoTheForm() throws Exception {
        List<String> codes = jdbc.sql("select p.code from piece p join piece_state s on s.piece_id = p.id"
                        + " where s.state = 'READY' or s.state = 'OFFERED' order by p.code fetch first 2 rows only")
                .query(String.class)
                .list();
        mvc.perform(get("/asking").param("codes", codes.get(0)).with(owner()))
                .andExpect(status().isOk())
                .andExpect(COMPLETE)
                .andExpect(content().string(containsString("True floor")))
                .andExpect(content().string(containsString("/offers/new?codes=" + codes.get(0))));
        mvc.perform(get("/asking").param("codes", String.join(" ", codes)).with(owner()))
                .andExpect(status().isOk())
                .andExpect(COMPLETE);
        mvc.perform(get("/asking").param("codes", "NOSUCH").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("No piece has the code NOSUCH")));
        mvc.perform(post("/offers/new")
                        .with(owner())
                        .param("act", "ask")
                        .param("codes", codes.get(0))
                        .param("note", "By the window"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrlPattern("/asking?codes=" + codes.get(0) + "*note=By*"));
        mvc.perform(get("/offers/new")
                        .with(owner())
                        .param("codes", codes.get(0))
                        .param("price", "41.95")
                        .param("note", "By the window")
                        .param(
                                "channels",
                                channels.all().get(0).id() + ","
                                        + channels.all().get(1).id()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("value=\"41.95\"")))
                .andExpect(content().string(containsString("By the window")))
                .andExpect(content()
                        .string(org.hamcrest.Matchers.matchesRegex("(?s)(.*name=\"channels\"[^>]*checked){2}.*")));
    }

    private void whatRemainsIsShownOnTheChannelAndWhatIsUsualIsKept() throws Exception {
        ChannelRules.Known quay = named("Lantern Quay");
        // By hand, by the rule since October 2025: 9.5 % of 46.00 is 4.37, + 0.25; 46.00 − 4.62 − 7.50 = 33.88.
        mvc.perform(get("/channels/" + quay.id())
                        .with(owner())
                        .param("tried", "true")
                        .param("price", "40")
                        .param("shipping", "6")
                        .param("outlay", "7.50")
                        .param("tax", "8"))
                .andExpect(status().isOk())
                .andExpect(COMPLETE)
                .andExpect(content().string(containsString("4.62")))
                .andExpect(content().string(containsString("$33.88")))
                .andExpect(content().string(containsString("$3.20")));
        mvc.perform(get("/channels/" + quay.id())
                        .with(owner())
                        .param("tried", "true")
                        .param("price", "1,234"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("two ways")));
        mvc.perform(post("/channels/" + quay.id() + "/usual")
                        .with(owner())
                        .param("shipping", "6")
                        .param("outlay", "7.50")
                        .param("tax", "8"))
                .andExpect(status().isSeeOther());
        assertThat(named("Lantern Quay").usual().outlay().minor()).isEqualTo(750);
        mvc.perform(get("/channels/" + quay.id() + "/prices").with(owner()))
                .andExpect(status().isOk())
                .andExpect(COMPLETE)
                .andExpect(content().string(containsString("$100.00")));
        mvc.perform(get("/channels/" + quay.id() + "/prices")
                        .with(owner())
                        .param("tried", "true")
                        .param("step", "0.01"))
                .andExpect(content().string(containsString("up to 60 prices")));
    }

    /** A new rule, even from a day long ago, leaves every sale's fee as it was kept. */
    private void anotherRuleDoesNotAlterOldSales() throws Exception {
        List<Long> before = fees();
        ChannelRules.Known quay = named("Lantern Quay");
        mvc.perform(post("/channels/" + quay.id())
                        .with(owner())
                        .param("version", version(quay.id()))
                        .param("name", quay.name())
                        .param("place", quay.moneyPlaceId().toString())
                        .param("rules[0].validFrom", "2025-01-01")
                        .param("rules[0].percent", "50")
                        .param("rules[1].validFrom", "2026-02-01")
                        .param("rules[1].percent", "60")
                        .param("rules[1].perOffer", "0.20")
                        .param("rules[1].perMonth", "15"))
                .andExpect(status().isSeeOther());
        assertThat(named("Lantern Quay").on(LocalDate.of(2026, 2, 1)).perMonth().minor())
                .isEqualTo(1500);
        assertThat(fees()).isEqualTo(before).hasSizeGreaterThan(20);
    }

    private void aMarkDownIsSuggestedTakenAndTakenBack() throws Exception {
        mvc.perform(get("/mark-downs").with(owner())).andExpect(status().isOk()).andExpect(COMPLETE);
        mvc.perform(post("/mark-downs/plan")
                        .with(owner())
                        .param("rows[0].days", "0")
                        .param("rows[0].percent", "100"))
                .andExpect(status().isUnprocessableEntity());
        mvc.perform(post("/mark-downs/plan")
                        .with(owner())
                        .param("rows[0].days", "30")
                        .param("rows[0].percent", "10")
                        .param("rows[1].days", "60")
                        .param("rows[1].percent", "25"))
                .andExpect(status().isSeeOther());
        assertThat(plan.steps()).hasSize(2);
        List<Suggestion> due = downs.due();
        assertThat(due).isNotEmpty().allSatisfy(one -> {
            assertThat(one.down().price()).isLessThan(one.present());
            assertThat(one.down().price()).isGreaterThanOrEqualTo(one.floor());
            assertThat(one.days()).isGreaterThanOrEqualTo(30);
        });
        mvc.perform(get("/mark-downs").with(owner())).andExpect(status().isOk()).andExpect(COMPLETE);
        Suggestion first = due.get(0);
        mvc.perform(post("/mark-downs").with(owner())).andExpect(status().isUnprocessableEntity());
        take(first, "1.00", first.present().minor() + 1).andExpect(status().isUnprocessableEntity());
        assertThat(asked(first.offerId())).isEqualTo(first.present().minor());
        take(first, "9.95", first.present().minor()).andExpect(status().isSeeOther());
        assertThat(asked(first.offerId())).isEqualTo(995);
        assertThat(downs.due()).extracting(Suggestion::offerId).doesNotContain(first.offerId());
        mvc.perform(get("/mark-downs").with(owner()))
                .andExpect(COMPLETE)
                .andExpect(content().string(containsString("Another price since today")));
        mvc.perform(post("/mark-downs/" + first.offerId() + "/back").with(owner()))
                .andExpect(status().isSeeOther());
        assertThat(asked(first.offerId())).isEqualTo(first.present().minor());
        assertThat(prices.takeBack(first.offerId(), shop.today())).isFalse();
        assertThat(downs.due()).hasSameSizeAs(due);
        allThatAreTickedAreTakenAtOnce(due);
    }

    /** However many are ticked, the books follow once; where one is stale, none is taken. */
    private void allThatAreTickedAreTakenAtOnce(List<Suggestion> due) {
        assertThat(due).hasSizeGreaterThan(3);
        List<MarkDowns.Chosen> all = due.stream()
                .map(one -> new MarkDowns.Chosen(
                        one.offerId(), one.present(), one.down().price()))
                .toList();
        List<MarkDowns.Chosen> oneStale = new java.util.ArrayList<>(all);
        oneStale.set(
                2,
                new MarkDowns.Chosen(
                        all.get(2).offer(), Amount.of(1), all.get(2).price()));
        assertThatThrownBy(() -> downs.take(oneStale)).isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(downs.due()).hasSameSizeAs(due);
        long before = changesOfTheBooks();
        downs.take(all);
        assertThat(changesOfTheBooks()).isEqualTo(before + 1);
        all.forEach(one -> assertThat(asked(one.offer())).isEqualTo(one.price().minor()));
        all.forEach(one -> assertThat(downs.takeBack(one.offer())).isTrue());
    }

    private long changesOfTheBooks() {
        return jdbc.sql("select changes from books").query(Long.class).single();
    }

    private void feesThatAreDueBecomeExpensesAndAreDueAgainWithoutThem() throws Exception {
        assertThat(charges.due()).isEmpty();
        UUID stall = named("Saturday stall").id();
        UUID quay = named("Lantern Quay").id();
        jdbc.sql("update channel_fee set month_minor = 4000 where channel_id = ? and valid_from = date '2025-10-01'")
                .param(stall)
                .update();
        jdbc.sql("update channel_fee set offer_minor = 20 where channel_id = ?")
                .param(quay)
                .update();
        List<Charge> due = charges.due();
        assertThat(due).anyMatch(one -> one.offerId() != null).anyMatch(one -> one.month() != null);
        assertThat(due.stream()
                        .filter(one -> one.month() != null)
                        .findFirst()
                        .orElseThrow()
                        .day())
                .isEqualTo(LocalDate.of(2025, 10, 1));
        mvc.perform(get("/channel-fees").with(owner()))
                .andExpect(status().isOk())
                .andExpect(COMPLETE);
        List<Charge> open =
                due.stream().filter(one -> one.day().getYear() >= 2026).toList();
        Charge rent =
                open.stream().filter(one -> one.month() != null).findFirst().orElseThrow();
        Charge other =
                open.stream().filter(one -> one.offerId() != null).findFirst().orElseThrow();
        mvc.perform(post("/channel-fees").with(owner())).andExpect(status().isUnprocessableEntity());
        settle("record", rent, "38.00").andExpect(status().isSeeOther());
        settle("waive", other, "").andExpect(status().isSeeOther());
        assertThat(charges.due()).hasSize(due.size() - 2);
        UUID expense = jdbc.sql("select e.id from expense e join document d on d.id = e.id"
                        + " where e.category = 'booth_rent' and e.amount_minor = 3800 and d.doc_date = ?")
                .param(rent.day())
                .query(UUID.class)
                .single();
        settle("record", rent, "38.00").andExpect(status().isUnprocessableEntity());
        mvc.perform(post("/expenses/" + expense + "/remove").with(owner())).andExpect(status().isSeeOther());
        assertThat(charges.due()).extracting(Charge::key).contains(rent.key()).doesNotContain(other.key());
    }

    private org.springframework.test.web.servlet.ResultActions settle(String act, Charge charge, String amount)
            throws Exception {
        return mvc.perform(post("/channel-fees")
                .with(owner())
                .param("act", act)
                .param("rows[0].key", charge.key())
                .param("rows[0].take", "true")
                .param("rows[0].amount", amount));
    }

    private org.springframework.test.web.servlet.ResultActions take(Suggestion one, String price, long before)
            throws Exception {
        return mvc.perform(post("/mark-downs")
                .with(owner())
                .param("rows[0].offer", one.offerId().toString())
                .param("rows[0].before", String.valueOf(before))
                .param("rows[0].take", "true")
                .param("rows[0].price", price));
    }

    private long asked(UUID offer) {
        return jdbc.sql("select price_minor from offer_state where offer_id = ?")
                .param(offer)
                .query(Long.class)
                .single();
    }

    private List<Long> fees() {
        return jdbc.sql("select amount_minor from posting where account = 'FEES' order by document_id, amount_minor")
                .query(Long.class)
                .list();
    }

    private String version(UUID channel) {
        return jdbc.sql("select version from channel where id = ?")
                .param(channel)
                .query(String.class)
                .single();
    }

    private ChannelRules.Known named(String start) {
        return channels.all().stream()
                .filter(channel -> channel.name().startsWith(start))
                .findFirst()
                .orElseThrow();
    }
}
