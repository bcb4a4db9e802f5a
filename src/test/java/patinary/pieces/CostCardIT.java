package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.ledger.StockPlace;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.spending.Trip;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCount;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** The cost card, and what happens to a piece without a sale; figures worked by hand beside each test. */
@ShopTest
class CostCardIT {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private CostCards cards;

    @Autowired
    private SupplyLines supplyLines;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private final UUID paint = UUID.randomUUID();
    private UUID box = new UUID(0, 0);

    @BeforeEach
    void stockTheShop() {
        UUID line = UUID.randomUUID();
        supplyLines.save(new SupplyLine(line, "Chalk paints", "an invented maker"));
        supplies.save(new Supply(
                paint, new Supply.Facts(line, "Pond green", Dimension.VOLUME, null, null, List.of(), List.of())));
        box = newPieces.create("Oak box", null, null);
    }

    /**
     * Box 10.00. Jar 20.00 of 200 ml; 50 ml used = 5.00, by eye. A count finds 130 ml, 20 ml less than the books: all of
     * it was used here = 2.00 more. Landed 17.00. An hour at 20.00. A trip of 30 miles at 0.70 = 21.00 over two pieces.
     */
    @Test
    void eachCentOfLandedCostSaysWhereItCameFrom() throws Exception {
        Trip trip =
                new Trip(UUID.randomUUID(), DAY, "", "Buying round", "Shop", "Fair", new BigDecimal("30"), 700, null);
        books.record(trip);
        UUID other = newPieces.create("Tin tray", null, null);
        books.record(FoundBoxes.bought(DAY, 1000, trip.id(), box));
        books.record(FoundBoxes.bought(DAY, 700, trip.id(), other));
        books.record(FoundBoxes.supply(DAY, 2000, paint, 200));
        var entry = FoundBoxes.worked(DAY.plusDays(1), box, 60, paint, 50);
        books.record(entry);
        books.record(new SupplyCount(
                UUID.randomUUID(), DAY.plusDays(2), "", paint, StockPlace.BENCH, BigDecimal.valueOf(130)));

        CostCard card = cards.of(box);

        assertThat(card.lines())
                .extracting(CostLine::what, CostLine::minor, CostLine::estimated)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("bought", 1000L, false),
                        org.assertj.core.groups.Tuple.tuple("used", 500L, true),
                        org.assertj.core.groups.Tuple.tuple("count", 200L, true));
        assertThat(card.lines().stream().mapToLong(CostLine::minor).sum())
                .isEqualTo(card.figures().landedMinor())
                .isEqualTo(1700);
        assertThat(card.trueCost()).isEqualTo(new TrueCost(Amount.of(1700), Amount.of(2000), Amount.of(1050)));
        see(get("/pieces/" + box), "Bought: Boxes", "Pond green, used at the bench", "corrected by a count", "$47.50")
                .andExpect(content().string(containsString("/bench/" + entry.id())))
                .andExpect(content().string(containsString("class=\"cost-purchase\"")));
    }

    @Test
    void theSharesOfATripAddUpToTheTrip() {
        Trip trip =
                new Trip(UUID.randomUUID(), DAY, "", "Buying round", "Shop", "Fair", new BigDecimal("10"), 700, null);
        books.record(trip);
        UUID second = newPieces.create("Tin tray", null, null);
        UUID third = newPieces.create("Stool", null, null);
        books.record(FoundBoxes.bought(DAY, 3000, trip.id(), box, second, third));

        // 10 miles at 0.70 are 7.00; over three 2.34, 2.33, 2.33
        assertThat(List.of(box, second, third).stream()
                        .map(piece -> cards.of(piece).trueCost().trip().minor())
                        .sorted()
                        .toList())
                .containsExactly(233L, 233L, 234L);
    }

    @Test
    void aUseThatPrecedesItsReceiptIsShownAsNotYetCosted() throws Exception {
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        books.record(FoundBoxes.worked(DAY.plusDays(1), box, 30, paint, 50));
        see(get("/pieces/" + box), "not yet costed", "Some supplies used here were not bought yet");

        books.record(FoundBoxes.supply(DAY.plusDays(5), 2000, paint, 200));

        assertThat(cards.of(box).lines()).extracting(CostLine::what).containsExactly("bought", "used-later");
        assertThat(cards.of(box).waiting()).isEmpty();
    }

    @Test
    void aPieceIsLetGoOnceAndTakenBack() throws Exception {
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        MockHttpServletRequestBuilder form = post("/pieces/" + box + "/let-go")
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-03-09")
                .param("reason", "GIVEN_AWAY");

        mvc.perform(as(form)).andExpect(status().isSeeOther());
        // The same form sent twice is one document.
        mvc.perform(as(form)).andExpect(status().isSeeOther());

        assertThat(balance("OWN_USE")).isEqualTo(1000);
        see(get("/pieces/" + box), "let go", "Given away", "Take the letting go back");
        mvc.perform(as(post("/pieces/" + box + "/let-go")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-10")
                        .param("reason", "BROKEN")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("has already left")));

        mvc.perform(as(post("/pieces/" + box + "/let-go/undo"))).andExpect(status().isSeeOther());
        assertThat(balance("OWN_USE")).isZero();
        assertThat(balance("PIECES")).isEqualTo(1000);
        assertThat(cards.of(box).figures().state()).isEqualTo(PieceState.FOUND);
    }

    @Test
    void aDayBeforeTheBooksBeginOrAfterTodayIsRefused() throws Exception {
        for (String day : List.of("2024-12-31", "2999-01-01")) {
            mvc.perform(as(post("/pieces/" + box + "/let-go").param("date", day).param("reason", "KEPT")))
                    .andExpect(status().is(422));
        }
        assertThat(jdbc.sql("select count(*) from letting_go").query(Long.class).single())
                .isZero();
    }

    @Test
    void joinedPiecesCarryTheirCostIntoTheNewOneAndBack() throws Exception {
        UUID lid = newPieces.create("Lid", null, null);
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        books.record(FoundBoxes.bought(DAY, 250, null, lid));

        mvc.perform(as(post("/pieces/join")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-05")
                        .param("pieces", box.toString(), lid.toString())
                        .param("title", "Box with lid")))
                .andExpect(status().isSeeOther());

        UUID whole = jdbc.sql("select id from piece where title = 'Box with lid'")
                .query(UUID.class)
                .single();
        assertThat(cards.of(whole).figures().landedMinor()).isEqualTo(1250);
        assertThat(cards.of(box).figures().inStockMinor()).isZero();
        assertThat(cards.of(box).figures().state()).isEqualTo(PieceState.GONE);
        assertThat(cards.of(whole).parts()).extracting(CostCard.Part::code).containsExactly("P0001", "P0002");
        UUID document = jdbc.sql("select id from regrouping").query(UUID.class).single();
        see(get("/pieces/regroupings/" + document), "What went in", "Box with lid", "$12.50");

        mvc.perform(as(post("/pieces/regroupings/" + document + "/undo"))).andExpect(status().isSeeOther());
        assertThat(cards.of(box).figures().landedMinor()).isEqualTo(1000);
        assertThat(jdbc.sql("select count(*) from piece").query(Long.class).single())
                .isEqualTo(2);
    }

    @Test
    void onePieceMayTakeUpTheOthers() throws Exception {
        UUID lid = newPieces.create("Lid", null, null);
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        books.record(FoundBoxes.bought(DAY, 250, null, lid));

        mvc.perform(as(post("/pieces/join")
                        .param("date", "2025-03-05")
                        .param("pieces", box.toString(), lid.toString())
                        .param("into", box.toString())))
                .andExpect(status().isSeeOther());

        assertThat(cards.of(box).figures().landedMinor()).isEqualTo(1250);
        assertThat(cards.of(box).figures().state()).isEqualTo(PieceState.FOUND);
        assertThat(cards.of(lid).figures().state()).isEqualTo(PieceState.GONE);
        see(get("/pieces/" + box), "From pieces joined or split", "went in");
    }

    @Test
    void aSplitSharesTheCostByWeightAndCannotBeTakenBackOnceWorkedOn() throws Exception {
        books.record(FoundBoxes.bought(DAY, 1000, null, box));
        mvc.perform(as(split().param("action", "add"))).andExpect(status().isOk());
        assertThat(jdbc.sql("select count(*) from regrouping").query(Long.class).single())
                .isZero();

        mvc.perform(as(split())).andExpect(status().isSeeOther());

        // 10.00 as 2 to 1: 6.67 and 3.33
        assertThat(jdbc.sql("select f.landed_minor from piece_figures f join piece p on p.id = f.piece_id"
                                + " where p.title in ('Frame', 'Glass') order by p.title")
                        .query(Long.class)
                        .list())
                .containsExactly(667L, 333L);
        UUID glass = jdbc.sql("select id from piece where title = 'Glass'")
                .query(UUID.class)
                .single();
        books.record(FoundBoxes.worked(DAY.plusDays(9), glass, 10, paint, 1));
        UUID document = jdbc.sql("select id from regrouping").query(UUID.class).single();
        mvc.perform(as(post("/pieces/regroupings/" + document + "/undo"))).andExpect(status().isSeeOther());
        assertThat(jdbc.sql("select count(*) from regrouping").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void lessThanTwoPiecesAreNoJoiningAndNoSplit() throws Exception {
        mvc.perform(as(post("/pieces/join").param("date", "2025-03-05").param("pieces", box.toString())))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("at least two pieces")));
        mvc.perform(as(post("/pieces/" + box + "/split")
                        .param("date", "2025-03-05")
                        .param("parts[0].title", "Frame")))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("at least two new pieces")));
    }

    private MockHttpServletRequestBuilder split() {
        return post("/pieces/" + box + "/split")
                .param("date", "2025-03-05")
                .param("parts[0].title", "Frame")
                .param("parts[0].weight", "2")
                .param("parts[1].title", "Glass")
                .param("parts[1].weight", "1");
    }

    private long balance(String account) {
        return jdbc.sql("select coalesce(sum(amount_minor), 0) from posting where account = ?")
                .param(account)
                .query(Long.class)
                .single();
    }

    private ResultActions see(MockHttpServletRequestBuilder request, String... words) throws Exception {
        ResultActions page = mvc.perform(as(request)).andExpect(status().isOk());
        for (String word : words) {
            page.andExpect(content().string(containsString(word)));
        }
        return page;
    }

    private static MockHttpServletRequestBuilder as(MockHttpServletRequestBuilder request) {
        return request.with(InventedShop.owner());
    }
}
