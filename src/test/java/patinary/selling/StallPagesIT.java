package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.supplies.Supplies;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** The stall in a phone's hand. */
@ShopTest
@ExtendWith(Browser.class)
class StallPagesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Supplies supplies;

    @Autowired
    private JdbcClient jdbc;

    private InventedGoods goods;

    @BeforeEach
    void offers() throws Exception {
        goods = new InventedGoods(program);
        offer("P0001", "45");
        offer("P0002", "12.50");
    }

    /** One to open the page, one on the piece, one on "Sold". */
    @Test
    void aSaleTakesThreeTaps(Browser.Visit visit) {
        Page page = phone(visit);
        int taps = 0;
        page.navigate(visit.page().url() + "stall");
        taps++;
        page.tap("[data-codes=P0001]");
        taps++;
        page.tap(".stall-act button");
        taps++;
        page.waitForCondition(() -> goods.count("sale") == 1);

        assertThat(taps).isEqualTo(3);
        assertThat(goods.money(goods.cash)).isEqualTo(4500);
        page.context().close();
    }

    @Test
    void tellsTheChangeAndIsSeen(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/stall");
        visit.look("stall");
        page.fill("#stall-words", "jug");
        assertThat(page.locator("#stall-list li:visible").count()).isEqualTo(1);
        page.click("[data-codes=P0002]");
        page.fill("#price", "11");
        assertThat(page.locator("#stall-asked").textContent()).contains("$12.50");
        assertThat(page.locator("#stall-notes button").allTextContents())
                .containsExactly("Exact", "$12.00", "$15.00", "$20.00", "$50.00");
        page.click("#stall-notes button:has-text('$20.00')");
        assertThat(page.locator("#stall-change").textContent()).contains("$9.00");
        visit.look("stall-sale");
        page.fill("#got", "10");
        page.click(".stall-act button");
        assertThat(goods.count("sale")).as("too little cash stores nothing").isZero();
        page.click("#stall-notes button:has-text('Exact')");
        page.click(".stall-act button");
        page.waitForCondition(() -> goods.count("sale") == 1);
        assertThat(goods.money(goods.cash)).isEqualTo(1100);
        visit.open("/stall");
        visit.look("stall-sold");
        page.click("button:has-text('Undo')");
        page.waitForCondition(() -> goods.count("sale") == 0);
    }

    private static Page phone(Browser.Visit visit) {
        visit.signIn();
        BrowserContext phone = visit.context()
                .browser()
                .newContext(new NewContextOptions()
                        .setIsMobile(true)
                        .setHasTouch(true)
                        .setViewportSize(390, 844)
                        .setStorageState(visit.context().storageState()));
        return phone.newPage();
    }

    private void offer(String code, String price) throws Exception {
        mvc.perform(post("/offers/new")
                .with(InventedShop.owner())
                .param("id", UUID.randomUUID().toString())
                .param("date", "2025-03-01")
                .param("codes", code)
                .param("price", price)
                .param("channels", goods.stall.toString()));
    }
}
