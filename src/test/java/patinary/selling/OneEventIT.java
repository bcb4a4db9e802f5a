package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
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
import patinary.pieces.NewPieces;
import patinary.pieces.Regrouping;
import patinary.supplies.Supplies;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** When an offer is over and what was sold: the views of pieces, offers and sales agree. Goods are invented. */
@ShopTest
class OneEventIT {

    private static final LocalDate OFFERED = LocalDate.of(2025, 3, 1);
    private static final LocalDate LATER = LocalDate.of(2025, 3, 10);

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private InventedGoods goods;

    @BeforeEach
    void stock() {
        goods = new InventedGoods(program);
    }

    @Test
    void aSetIsOverWithTheFirstOfItsPiecesThatIsSold() throws Exception {
        UUID set = offer(null, goods.tray, goods.jug);
        assertThat(goods.state(goods.jug)).isEqualTo("OFFERED");
        sell("P0001", "40.00");
        assertThat(offerState(set)).isEqualTo("SOLD");
        assertThat(goods.state(goods.jug)).isEqualTo("FOUND");
        assertThat(ends(set)).containsExactly(LATER, LATER);
    }

    @Test
    void aSetIsOverWithTheFirstOfItsPiecesThatIsGone() {
        UUID set = offer(null, goods.tray, goods.jug);
        letGo(goods.tray);
        assertThat(offerState(set)).isEqualTo("ENDED");
        assertThat(goods.state(goods.jug)).isEqualTo("FOUND");
        assertThat(ends(set)).containsExactly(LATER, LATER);
    }

    @Test
    void whatIsLeftOfASetCanBeOfferedAnew() throws Exception {
        offer(null, goods.tray, goods.jug);
        sell("P0001", "40.00");
        UUID alone = UUID.randomUUID();
        books.record(offer(alone, LATER.plusDays(1), null, goods.jug));
        assertThat(goods.state(goods.jug)).isEqualTo("OFFERED");
        assertThat(offerState(alone)).isEqualTo("LIVE");
        assertThat(jdbc.sql("select count(*) from offer_spell where offer_id = ? and until_day is null")
                        .param(alone)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void theFirstOfTheEndsCounts() {
        UUID withdrawn = offer(LATER.minusDays(3), goods.tray);
        letGo(goods.tray);
        assertThat(ends(withdrawn)).containsExactly(LATER.minusDays(2));
    }

    @Test
    void aPieceThatComesOutOfALaterRegroupingIsBack() {
        UUID whole = newPieces.create("Tray on a jug", null, null);
        regroup(LATER, List.of(goods.tray, goods.jug), whole);
        assertThat(goods.state(goods.tray)).isEqualTo("GONE");
        regroup(LATER.plusDays(1), List.of(whole), goods.tray, goods.jug);
        assertThat(goods.state(goods.tray)).isEqualTo("FOUND");
        assertThat(goods.state(goods.jug)).isEqualTo("FOUND");
        assertThat(goods.state(whole)).isEqualTo("GONE");
    }

    /** A piece of no cost given for nothing has no posting; the brushes are on two lines of one sale. */
    @Test
    void everythingSoldHasItsRow() throws Exception {
        UUID gift = newPieces.create("P0099", "A stone", null, null);
        UUID sale = UUID.randomUUID();
        mvc.perform(post("/sales/new")
                        .with(InventedShop.owner())
                        .param("id", sale.toString())
                        .param("date", LATER.toString())
                        .param("channel", goods.stall.toString())
                        .param("lines[0].codes", "P0099")
                        .param("lines[0].price", "0")
                        .param("lines[1].supply", goods.brushes.toString())
                        .param("lines[1].quantity", "1")
                        .param("lines[1].content", "1")
                        .param("lines[1].price", "5")
                        .param("lines[2].supply", goods.brushes.toString())
                        .param("lines[2].quantity", "2")
                        .param("lines[2].content", "1")
                        .param("lines[2].price", "4"))
                .andExpect(status().is3xxRedirection());
        assertThat(jdbc.sql("select count(*) from posting where piece_id = ?")
                        .param(gift)
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(jdbc.sql("select price_minor from sale_part where sale_id = ? order by price_minor")
                        .param(sale)
                        .query(Long.class)
                        .list())
                .containsExactly(0L, 1300L);
        assertThat(jdbc.sql("select count(*) from piece_sold where piece_id = ?")
                        .param(gift)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    private UUID offer(@Nullable LocalDate ended, UUID... pieces) {
        UUID id = UUID.randomUUID();
        books.record(offer(id, OFFERED, ended, pieces));
        return id;
    }

    private Offer offer(UUID id, LocalDate day, @Nullable LocalDate ended, UUID... pieces) {
        return new Offer(
                id,
                new Offer.Content(
                        day,
                        "",
                        "",
                        null,
                        ended,
                        Stream.of(pieces)
                                .map(piece -> new Offer.OfferedPiece(piece, BigDecimal.ONE))
                                .toList(),
                        List.of(goods.stall),
                        List.of(new Offer.Price(day, Amount.of(4500))),
                        List.of()));
    }

    private void sell(String code, String price) throws Exception {
        mvc.perform(post("/sales/new")
                        .with(InventedShop.owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("date", LATER.toString())
                        .param("channel", goods.stall.toString())
                        .param("lines[0].codes", code)
                        .param("lines[0].price", price))
                .andExpect(status().is3xxRedirection());
    }

    private void letGo(UUID piece) {
        books.record(new LettingGo(UUID.randomUUID(), LATER, "", piece, LettingGo.Reason.BROKEN));
    }

    private void regroup(LocalDate day, List<UUID> from, UUID... to) {
        books.record(new Regrouping(
                UUID.randomUUID(),
                day,
                "",
                from,
                Stream.of(to)
                        .map(piece -> new Regrouping.Part(piece, BigDecimal.ONE))
                        .toList()));
    }

    private String offerState(UUID offer) {
        return jdbc.sql("select state from offer_state where offer_id = ?")
                .param(offer)
                .query(String.class)
                .single();
    }

    private List<LocalDate> ends(UUID offer) {
        return jdbc.sql("select until_day from offer_spell where offer_id = ?")
                .param(offer)
                .query(LocalDate.class)
                .list();
    }
}
