package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.pieces.NewPieces;
import patinary.testing.CleanShop;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Files of sales by the pages: looked at, tried out, brought in once, and taken back. */
@ShopTest
class BringingIT {

    private static final String HEAD =
            "Order number,Order date,Item title,SKU,Quantity,Price,Shipping,Order total,Buyer\n";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private ShopArchive archive;

    private final byte[] plain = Shape.plain().bytes();
    private BroughtShop shop;
    private Hand hand;

    @BeforeEach
    void stock() {
        shop = new BroughtShop(program);
        hand = new Hand(program.getBean(MockMvc.class));
    }

    /**
     * Three orders: the tray at 48.00 with shipping 6.00; the jug at 1234.50; the sign at 20.00 with three brushes at 5.00 and
     * shipping 4.00. Sales 48.00 + 1234.50 + 35.00 = 1317.50; fees 5.40 + 123.45 + 3.90; cost 8.00 + 4.00 + 2.00, and 3 x 2.00.
     */
    @Test
    void bringsAFileInAndTakesItBack() throws Exception {
        Map<String, Long> before = shop.balances();
        UUID draft = hand.draft(plain);
        hand.page("/sales/bring/" + draft)
                .andExpect(content().string(containsString("sales.csv: 4 rows")))
                .andExpect(content().string(containsString("looks like UTF-8")));
        hand.map(draft, shop.market, Map.of("name", "Marketplace file", "sent", "true"))
                .andExpect(redirectedUrl("/sales/bring/" + draft + "/rows"));
        hand.page("/sales/bring/" + draft + "/rows").andExpect(content().string(containsString("Round brush")));
        hand.pick(draft, "5", "supply:" + shop.brushes + ":1", "")
                .andExpect(redirectedUrl("/sales/bring/" + draft + "/check"));
        assertThat(hand.check(draft)).contains("Bring in 3 sales");
        assertThat(shop.balances()).isEqualTo(before);
        assertThat(shop.count("sale")).isZero();

        hand.bring(draft).andExpect(redirectedUrl("/sales/bring/imports/" + draft));
        assertThat(shop.balances())
                .containsEntry("SALES", -131_750L)
                .containsEntry("SHIPPING_CHARGED", -1_000L)
                .containsEntry("FEES", 540L + 12_345 + 390)
                .containsEntry("COST_OF_PIECES", 1_400L)
                .containsEntry("COST_OF_RETAIL", 600L);
        // Sent a second time, the form finds the work done.
        hand.bring(draft, "").andExpect(redirectedUrl("/sales/bring/imports/" + draft));
        assertThat(shop.count("sale")).isEqualTo(3);
        hand.page("/sales/bring/imports/" + draft).andExpect(content().string(containsString("Take 3 sales back")));

        hand.undo(draft).andExpect(redirectedUrl("/sales/bring/imports/" + draft));
        assertThat(shop.balances()).isEqualTo(before);
        assertThat(shop.count("sale")).isZero();
        hand.page("/sales/bring").andExpect(content().string(containsString("Taken back")));
    }

    @Test
    void takesTheSavedMappingAndNoOrderTwice() throws Exception {
        bringPlainIn();
        UUID again = hand.draft(plain);
        assertThat(hand.check(again))
                .contains("Already in the books", "A-101, A-102, A-103")
                .doesNotContain("Bring in");
        hand.bring(again).andExpect(redirectedUrl("/sales/bring/" + again + "/check"));
        byte[] more = (Shape.plain().text().replace("A-101", " #a-101")
                        + "A-200,2025-05-01,Stool,P0004,1,9.00,,9.00,ann\n")
                .getBytes(StandardCharsets.UTF_8);
        UUID longer = hand.draft(more);
        assertThat(hand.check(longer)).contains("Bring in 1 sales");
        hand.bring(longer).andExpect(redirectedUrl("/sales/bring/imports/" + longer));
        assertThat(shop.count("sale")).isEqualTo(4);
        // Only the sale of this file goes.
        hand.undo(longer);
        assertThat(shop.count("sale")).isEqualTo(3);
    }

    @Test
    void proposesAsManyLikePiecesAsARowSold() throws Exception {
        NewPieces pieces = program.getBean(NewPieces.class);
        for (int i = 0; i < 3; i++) {
            pieces.create("Painted bauble", null, null);
        }
        byte[] several =
                (HEAD + "A-300,2025-05-01,Painted bauble,,2,30.00,,30.00,ann\n").getBytes(StandardCharsets.UTF_8);
        UUID draft = hand.draft(several);
        hand.map(draft, shop.market, Map.of());
        hand.page("/sales/bring/" + draft + "/rows")
                .andExpect(content().string(containsString("value=\"P0005 P0006\"")));
    }

    @Test
    void knowsAnOrderThatWasTypedByHand() throws Exception {
        program.getBean(MockMvc.class)
                .perform(post("/sales/new")
                        .param("date", "2025-03-10")
                        .param("channel", shop.market.toString())
                        .param("order", "a-101")
                        .param("lines[0].codes", "P0004")
                        .param("lines[0].price", "7.00")
                        .with(InventedShop.owner()))
                .andExpect(status().is3xxRedirection());
        UUID draft = hand.draft(plain);
        hand.map(draft, shop.market, Map.of());
        assertThat(hand.check(draft)).contains("<p>A-101</p>");
    }

    @Test
    void saysLineColumnAndReasonAndBringsInTheRest() throws Exception {
        byte[] file = (HEAD
                        + "1,2025-03-14,Tray,P0001,1,48.00,6.00,54.00,kit\n"
                        + "2,2025-03-15,Tray again,P0001,1,48.00,,48.00,kit\n"
                        + "3,2024-12-31,Jug,P0002,1,5.00,,5.00,kit\n"
                        + "4,2025-03-16,Sign,P0003,1,5.00,1.00,7.00,<b>kit</b>\n"
                        + "5,2025-03-16,Stool,P0004,1,<script>,,,kit\n"
                        + "6,2025-03-16,Pair,P0003,2,5.00,,,kit\n")
                .getBytes(StandardCharsets.UTF_8);
        UUID draft = hand.draft(file);
        hand.map(draft, shop.market, Map.of());
        assertThat(hand.check(draft))
                .contains("Bring in 1 sales")
                .contains("P0001 Painted tin tray has already left")
                .contains("The file says 7.00, its parts add up to 6.00")
                .contains("&lt;script&gt; is no number")
                .contains("The row says 2, but 1 pieces were chosen")
                .doesNotContain("<script>,", "<b>kit");
        hand.bring(draft).andExpect(redirectedUrl("/sales/bring/imports/" + draft));
        assertThat(shop.count("sale")).isEqualTo(1);
    }

    @Test
    void leavesRowsOutAndTakesPiecesByTheirCodes() throws Exception {
        UUID draft = hand.draft(plain);
        hand.map(draft, shop.market, Map.of());
        hand.pick(draft, "5", "", "P9999")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("No piece of the shop has this code")));
        hand.pick(draft, "5", "out", "");
        hand.pick(draft, "2", "piece:P0001", "P0004");
        assertThat(hand.check(draft)).contains("Bring in 3 sales", "P0004 Tin tray");
        hand.bring(draft);
        assertThat(shop.balances()).containsEntry("COST_OF_PIECES", 900L).doesNotContainKey("COST_OF_RETAIL");
    }

    @Test
    void bringsNothingInWhereSomethingHasChangedSince() throws Exception {
        UUID draft = hand.draft(plain);
        hand.map(draft, shop.market, Map.of());
        hand.pick(draft, "5", "out", "");
        hand.bring(draft, "0".repeat(64)).andExpect(redirectedUrl("/sales/bring/" + draft + "/check"));
        assertThat(shop.count("sale")).isZero();
        assertThat(shop.count("sales_import")).isZero();
    }

    @Test
    void takesNothingBackThatSomethingRestsOn() throws Exception {
        UUID id = bringPlainIn();
        UUID sale = shop.sale("A-101");
        program.getBean(MockMvc.class)
                .perform(post("/sales/" + sale + "/refund")
                        .param("id", UUID.randomUUID().toString())
                        .param("date", "2025-03-20")
                        .param("lines[0].thing", shop.tray.toString())
                        .param("lines[0].amount", "1.00")
                        .param("way", "PLACE")
                        .param("place", shop.balance.toString())
                        .with(InventedShop.owner()))
                .andExpect(redirectedUrl("/sales/" + sale));
        hand.undo(id)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Nothing was taken back")))
                .andExpect(content().string(containsString("/sales/" + sale)));
        assertThat(shop.count("sale")).isEqualTo(3);
        assertThat(shop.count("sales_import_sale")).isEqualTo(3);
    }

    @Test
    void asksForWhatIsMissing() throws Exception {
        hand.upload(new byte[0]).andExpect(status().is(422));
        hand.upload(new byte[Drafts.LARGEST + 1])
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("larger than 4 MB")));
        UUID draft = hand.draft(Shape.plain()
                .date("dd/MM/yyyy")
                .text()
                .replace("14/03", "04/03")
                .getBytes(StandardCharsets.UTF_8));
        hand.page("/sales/bring/" + draft)
                .andExpect(content().string(containsString("can be 4 Mar 2025 or 3 Apr 2025")));
        hand.map(draft, shop.market, Map.of("dates", "", "channel", "", MappingAnswers.field(Meaning.TAX), "5"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Say how dates are written")))
                .andExpect(content().string(containsString("Choose the channel")))
                .andExpect(content().string(containsString("This column was chosen already")));
        hand.page("/sales/bring/" + draft + "/check").andExpect(redirectedUrl("/sales/bring/" + draft));
        hand.page("/sales/bring/" + draft + "/rows").andExpect(redirectedUrl("/sales/bring/" + draft));
        hand.bring(draft, "0".repeat(64)).andExpect(redirectedUrl("/sales/bring/" + draft + "/check"));
        hand.pick(draft, "2", "out", "").andExpect(status().is3xxRedirection());
        hand.page("/sales/bring/" + UUID.randomUUID()).andExpect(status().isNotFound());
    }

    @Test
    void isTakenBackInAShopThatWasBroughtBack(@TempDir Path folder) throws Exception {
        UUID id = bringPlainIn();
        archive.exportFolder(folder, Progress.SILENT);
        CleanShop.empty(program);
        archive.load(folder, Progress.SILENT);
        assertThat(shop.count("sale")).isEqualTo(3);
        assertThat(shop.count("sales_mapping_column")).isEqualTo(9);
        hand.undo(id).andExpect(redirectedUrl("/sales/bring/imports/" + id));
        assertThat(shop.count("sale")).isZero();
    }

    private UUID bringPlainIn() throws Exception {
        UUID draft = hand.draft(plain);
        hand.map(draft, shop.market, Map.of("name", "Marketplace file"));
        hand.pick(draft, "5", "supply:" + shop.brushes + ":1", "");
        hand.bring(draft).andExpect(redirectedUrl("/sales/bring/imports/" + draft));
        return draft;
    }
}
