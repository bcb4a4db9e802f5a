package patinary.covering;

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
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.selling.BuyerPayment;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.selling.Payout;
import patinary.selling.Refund;
import patinary.selling.RefundContent;
import patinary.selling.Sale;
import patinary.selling.SaleContent;
import patinary.selling.SaleExtras;
import patinary.selling.SaleLine;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.spending.OtherIncome;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** An invented year through the program: what its payouts cover, what is open, and the gross that others report. */
@ShopTest
@ExtendWith(Browser.class)
class CoveringIT {

    /** Of every price so many cents were a tip: what is reported holds it, whatever it is called here. */
    private static final long TIP = 25;

    private static final UUID CASH = new UUID(6, 1);
    private static final UUID BANK = new UUID(6, 2);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private CoverBook covers;

    @Autowired
    private GrossBook gross;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private Channels channels;

    private final InventedYear year = new InventedYear(150, 150, 4);

    @BeforeEach
    void record() {
        places.save(new MoneyPlace(CASH, "Cash box", MoneyPlace.Kind.CASH));
        places.save(new MoneyPlace(BANK, "Bank", MoneyPlace.Kind.BANK));
        for (int i = 0; i < year.channels; i++) {
            places.save(new MoneyPlace(place(i), "Balance " + i, MoneyPlace.Kind.CHANNEL));
            channels.save(new Channel(channel(i), "Channel " + i, place(i), i % 2 == 1, List.of()));
        }
        List<Document> all = new ArrayList<>();
        year.sales.forEach(sold -> all.add(sale(sold)));
        year.refunds.forEach(back -> all.add(refund(back)));
        year.payments.forEach(later -> all.add(new BuyerPayment(
                later.id(),
                later.day(),
                "",
                later.sale().id(),
                "Ash",
                place(later.sale().channel()),
                Amount.of(later.amount()))));
        year.payouts.forEach(out -> all.add(new Payout(
                out.id(), out.day(), "", place(out.channel()), BANK, Amount.of(out.amount()), Amount.of(out.fee()))));
        books.recordAll(all);
    }

    @Test
    void aYearReconcilesToNothingUnexplained() {
        coverEverything();
        for (int i = 0; i < year.channels; i++) {
            BalanceCover cover = covers.of(place(i));
            assertThat(cover.covers()).isNotEmpty().allMatch(one -> one.state() == Cover.State.MATCHED);
            assertThat(cover.differences()).isEqualTo(Amount.ZERO);
            assertThat(cover.openSum().minor()).isEqualTo(holds(i));
            assertThat(covers.open(cover.covers().get(0).payout()))
                    .as("nothing is covered twice")
                    .doesNotContainAnyElementsOf(year.payouts.get(0).covers());
        }
        Sale across = sale(
                new InventedYear.Sold(new UUID(9, 9), 0, LocalDate.of(2025, 12, 30), 5000, 0, 0, false, 0, 5000, 0, 0),
                place(1));
        books.record(across);
        OtherIncome lesson =
                new OtherIncome(new UUID(9, 7), LocalDate.of(2025, 6, 1), "", "Lessons", "", place(2), Amount.of(3000));
        books.record(lesson);
        for (int i = 0; i < year.channels; i++) {
            GrossReported reported = reported(i, truth(i) + (i == 1 ? 5000 : 0) + (i == 2 ? 3000 : 0));
            GrossBridge bridge = gross.bridge(reported);
            assertThat(bridge.unexplained())
                    .as("channel %s: %s", i, bridge.steps())
                    .isEqualTo(Amount.ZERO);
            assertThat(bridge.steps())
                    .filteredOn(step -> step.reason().equals("elsewhere"))
                    .extracting(GrossBridge.Step::amount)
                    .as("a tip is no money that was paid elsewhere")
                    .containsExactly(Amount.of(-paidElsewhere(i)));
            GrossBridge off = gross.bridge(reported(i, reported.amountMinor() - 123));
            assertThat(off.unexplained()).isEqualTo(Amount.of(-123));
        }
    }

    @Test
    void whatIsChangedOrRemovedLaterNoLongerAddsUp() {
        coverEverything();
        InventedYear.Out out = year.payouts.get(0);
        Movement gone = out.covers().stream()
                .filter(m -> year.refunds.stream()
                                .noneMatch(r -> m.documentId().equals(r.sale().id()))
                        && year.payments.stream()
                                .noneMatch(p -> m.documentId().equals(p.sale().id()))
                        && m.kind().equals("SALE"))
                .findFirst()
                .orElseThrow();
        transaction.executeWithoutResult(
                status -> books.remove(books.find(Sale.class, gone.documentId()).orElseThrow()));
        Cover cover = covers.find(out.id()).orElseThrow();
        assertThat(cover.state()).isEqualTo(Cover.State.DIFFERENT);
        assertThat(List.of(cover.difference(), cover.removed()))
                .containsExactly(Amount.of(gone.amountMinor()), Amount.of(gone.amountMinor()));
        assertThat(covers.standing(List.of(out.id()))).isEqualTo(Map.of(out.id(), "different"));
        BalanceCover balance = covers.of(place(out.channel()));
        assertThat(balance.balance().minor()).isEqualTo(holds(out.channel()));
        covers.takeBack(out.id());
        assertThat(covers.find(out.id()).orElseThrow().state()).isEqualTo(Cover.State.OPEN);
        assertThat(covers.of(place(out.channel())).balance().minor()).isEqualTo(holds(out.channel()));
    }

    @Test
    void thePagesProposeAndNeverTakeByThemselves() throws Exception {
        InventedYear.Out out = year.payouts.get(0);
        String page = "/payouts/" + out.id();
        mvc.perform(get(page).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("exactly")))
                .andExpect(content().string(not(containsString("checked=\"checked\""))))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get(page + "?proposal=0").with(owner()))
                .andExpect(content().string(containsString("checked=\"checked\"")));
        assertThat(covers.find(out.id()).orElseThrow().isSaid()).isFalse();
        say(post(page).param("act", "save"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("Tick at least one")));
        String first = out.covers().get(0).documentId().toString();
        say(post(page).param("act", "sum").param("covered", first)).andExpect(status().isOk());
        say(post(page).param("covered", UUID.randomUUID().toString())).andExpect(status().isUnprocessableEntity());
        say(post(page).param("covered", first)).andExpect(redirectedUrl(page));
        mvc.perform(get(page).with(owner()))
                .andExpect(content().string(containsString("does not add up")))
                .andExpect(content().string(containsString("left the balance beyond")));
        say(post(page + "/take-back")).andExpect(redirectedUrl(page));
        MockHttpServletRequestBuilder whole = post(page);
        out.covers().forEach(m -> whole.param("covered", m.documentId().toString()));
        say(whole).andExpect(redirectedUrl(page));
        mvc.perform(get(page).with(owner())).andExpect(content().string(containsString("adds up")));
        mvc.perform(get("/payouts").with(owner()))
                .andExpect(content().string(containsString("not yet said")))
                .andExpect(content().string(containsString("adds up")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/payouts/balances").with(owner())).andExpect(content().string(containsString("Balance 3")));
        mvc.perform(get("/payouts/balances/" + place(0)).with(owner()))
                .andExpect(content().string(containsString("Not covered by a payout")))
                .andExpect(content().string(not(containsString("??"))));
        mvc.perform(get("/payouts/balances/" + BANK).with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/payouts/" + UUID.randomUUID()).with(owner())).andExpect(status().isNotFound());
    }

    @Test
    void thePagesAreReadOnPhoneAndLaptop(Browser.Visit visit) {
        gross.add(reported(0, truth(0) - 500));
        visit.signIn();
        visit.open("/payouts");
        visit.look("payouts-covered");
        InventedYear.Out out = year.payouts.get(0);
        Page page = visit.open("/payouts/" + out.id());
        page.click("main a.button >> nth=0");
        visit.look("payout-choose");
        page.uncheck("[id='covered-0']");
        page.click("main button.main");
        visit.look("payout-different");
        assertThat(page.textContent("main")).contains("does not add up");
        visit.open("/payouts/balances/" + place(0));
        visit.look("payouts-balance");
        visit.open("/gross-reported/" + new UUID(8, 0));
        visit.look("gross-reported");
        visit.open("/sales-tax?year=2025&part=q2");
        visit.look("sales-tax");
    }

    @Test
    void aReportedGrossIsTypedAndItsTurnIsSaid() throws Exception {
        UUID id = UUID.randomUUID();
        InventedYear.Sold late =
                new InventedYear.Sold(new UUID(9, 8), 0, LocalDate.of(2025, 12, 31), 4000, 0, 0, false, 0, 4000, 0, 0);
        books.record(sale(late));
        say(gross("/gross-reported/new", id, truth(0))).andExpect(redirectedUrl("/gross-reported/" + id));
        mvc.perform(get("/gross-reported/" + id).with(owner()))
                .andExpect(content().string(containsString("not all is explained")))
                .andExpect(content().string(not(containsString("??"))));
        say(post("/gross-reported/" + id + "/other-side")
                        .param("turned", late.id().toString()))
                .andExpect(redirectedUrl("/gross-reported/" + id));
        mvc.perform(get("/gross-reported/" + id).with(owner()))
                .andExpect(content().string(containsString("everything is explained")))
                .andExpect(content().string(containsString("Dated in this time, but not in the report")));
        say(gross("/gross-reported/new", UUID.randomUUID(), 5))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("is there already")));
        say(gross("/gross-reported/" + id + "/edit", id, 5).param("version", "7"))
                .andExpect(status().isConflict());
        say(gross("/gross-reported/" + id + "/edit", id, 5).param("version", "0"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(get("/gross-reported").with(owner())).andExpect(content().string(containsString("Balance 0")));
        say(post("/gross-reported/" + id + "/remove")).andExpect(redirectedUrl("/gross-reported"));
        assertThat(gross.all()).isEmpty();
    }

    private void coverEverything() {
        for (InventedYear.Out out : year.payouts) {
            Cover cover = covers.find(out.id()).orElseThrow();
            List<Fit> fits = FitSearch.of(
                    covers.open(cover.payout()), out.day(), cover.payout().out());
            assertThat(fits).isNotEmpty();
            assertThat(covers.say(out.id(), fits.get(0).documents())).isTrue();
        }
    }

    /** What the year says that buyers paid through a balance. */
    private long truth(int channel) {
        return year.sales.stream()
                        .filter(s -> s.channel() == channel)
                        .mapToLong(InventedYear.Sold::paidHere)
                        .sum()
                + year.payments.stream()
                        .filter(p -> p.sale().channel() == channel)
                        .mapToLong(InventedYear.Later::amount)
                        .sum();
    }

    private long holds(int channel) {
        return covers.places().stream()
                .filter(one -> one.id().equals(place(channel)))
                .findFirst()
                .orElseThrow()
                .amountMinor();
    }

    private static GrossReported reported(int channel, long cents) {
        return new GrossReported(
                new UUID(8, channel), place(channel), "", InventedYear.FIRST, InventedYear.LAST, cents, false, "", 0);
    }

    private static MockHttpServletRequestBuilder gross(String to, UUID id, long cents) {
        return post(to).param("id", id.toString())
                .param("place", place(0).toString())
                .param("from", "2025-01-01")
                .param("to", "2025-12-31")
                .param("amount", BigDecimal.valueOf(cents, 2).toPlainString());
    }

    /** What the sales of a channel were not paid into its balance, with the one sale that was paid into another. */
    private long paidElsewhere(int channel) {
        return (channel == 0 ? 5000 : 0)
                + year.sales.stream()
                        .filter(sold -> sold.channel() == channel && sold.day().getYear() == 2025)
                        .mapToLong(sold -> sold.elsewhere() + sold.owed())
                        .sum();
    }

    private static Sale sale(InventedYear.Sold sold) {
        return sale(sold, place(sold.channel()));
    }

    private static Sale sale(InventedYear.Sold sold, UUID paidAt) {
        List<Tender> paid = new ArrayList<>();
        pay(paid, Way.PLACE, paidAt, sold.paidHere());
        pay(paid, Way.PLACE, CASH, sold.elsewhere());
        pay(paid, Way.OWED, null, sold.owed());
        return new Sale(
                sold.id(),
                new SaleContent(
                                sold.day(),
                                "",
                                channel(sold.channel()),
                                "Ash",
                                "",
                                Amount.ZERO,
                                Amount.of(sold.shipping()),
                                Amount.of(sold.tax()),
                                sold.passed(),
                                Amount.of(sold.fee()),
                                place(sold.channel()),
                                null,
                                List.of(new SaleLine(
                                        1,
                                        "Tray",
                                        BigDecimal.ONE,
                                        Amount.of(sold.price() - TIP),
                                        Amount.ZERO,
                                        null,
                                        null)),
                                List.of(),
                                paid,
                                List.of())
                        .with(new SaleExtras("", Amount.of(TIP))));
    }

    private static void pay(List<Tender> paid, Way way, @Nullable UUID at, long cents) {
        if (cents != 0) {
            paid.add(new Tender(paid.size() + 1, way, at, Amount.of(cents)));
        }
    }

    private static Refund refund(InventedYear.Back back) {
        UUID at = place(back.sale().channel());
        return new Refund(
                back.id(),
                new RefundContent(
                        back.day(),
                        "",
                        back.sale().id(),
                        Way.PLACE,
                        at,
                        Amount.of(back.amount()),
                        Amount.of(back.tax()),
                        Amount.of(back.feeBack()),
                        at,
                        List.of()));
    }

    private static UUID place(int channel) {
        return new UUID(7, channel);
    }

    private static UUID channel(int channel) {
        return new UUID(5, channel);
    }

    private ResultActions say(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(owner()));
    }
}
