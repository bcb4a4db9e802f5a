package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.supplies.Supplies;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** The pages of selling as a person goes through them, on a phone and on a laptop. */
@ShopTest
@ExtendWith(Browser.class)
class SellingPagesIT {

    @Autowired
    private ApplicationContext program;

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
    void addsAChannelWithABalanceOfItsOwn(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/channels/new");
        visit.look("channel-new");
        page.fill("#name", "Own web shop");
        page.fill("#newPlace", "Card reader balance");
        page.fill("[id='rules0.validFrom']", "2025-01-01");
        page.fill("[id='rules0.percent']", "2.9 %");
        page.fill("[id='rules0.fixed']", "1,234");
        page.click("main button.main");
        assertThat(page.textContent("[id='rules0.fixed-error']")).contains("two ways");
        page.fill("[id='rules0.fixed']", "0.30");
        page.click("main button.main");
        visit.look("channels");
        assertThat(page.textContent("main")).contains("Own web shop", "2.9% + $0.30", "Card reader balance");
        page.click("tbody a:has-text('Own web shop')");
        page.fill("[id='rules1.validFrom']", "2025-07-01");
        page.fill("[id='rules1.percent']", "3.1");
        page.click("main button.main");
        assertThat(page.textContent("main")).contains("3.1% + $0.00");
    }

    @Test
    void offersASetChangesItsPriceAndSellsIt(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/offers");
        visit.look("offers-empty");
        page.click("main .buttons a.main");
        page.selectOption("#add", "P0001");
        page.click("text=Add this piece");
        page.selectOption("#add", "P0002");
        page.click("text=Add this piece");
        page.fill("#weights", "3 1");
        page.fill("#title", "Tray and jug");
        page.fill("#price", "48");
        page.fill("#date", "2025-03-01");
        page.check("#channel-0");
        visit.look("offer-form");
        page.click("main button.main");
        page.fill("#date", "2025-03-05");
        page.fill("#price", "44");
        page.click("text=Ask this price");
        assertThat(page.textContent("main")).contains("$48.00", "$44.00");
        visit.look("offer");
        page.fill("#date", "2025-03-06");
        page.click("button:has-text('Pause')");
        assertThat(page.textContent("main")).contains("Paused", "Pauses");
        page.fill("#date", "2025-03-08");
        page.click("text=Offer again");
        visit.open("/offers?q=jug");
        visit.look("offers");

        page.click("tbody a:has-text('Tray and jug')");
        page.click("text=Record a sale");
        page.fill("#date", "2025-03-10");
        page.click("#of-the-shelf summary");
        page.selectOption("#addSupply", goods.brushes.toString());
        page.click("text=Add this supply");
        page.fill("[id='lines1.quantity']", "3");
        page.click("#less summary");
        page.fill("#discount", "5");
        page.fill("#shipping", "6");
        page.fill("#buyer", "Kit, an invented buyer");
        page.click("text=Recalculate fee and sums");
        // 44.00 + 15.00 - 5.00 = 54.00; 10 % of 60.00 + 0.30 = 6.30.
        assertThat(page.textContent("#sums")).contains("$54.00", "$60.00", "$6.30");
        visit.look("sale-form");
        page.click("main button.main");
        visit.look("sale");
        assertThat(page.textContent("main")).contains("Kit, an invented buyer", "Not yet sent");
        visit.open("/sales");
        visit.look("sales");
        assertThat(visit.open("/offers?state=SOLD").textContent("main")).contains("Tray and jug");
    }

    @Test
    void givesMoneyBackTakesADepositAndPaysOut(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/sales/new?piece=P0001");
        page.fill("[id='lines0.price']", "40");
        page.fill("#date", "2025-03-10");
        page.selectOption("#channel", goods.market.toString());
        page.click("#paid summary");
        page.fill("#owed", "10");
        page.click("main button.main");
        page.click("text=Record a payment");
        visit.look("payment");
        page.fill("#amount", "10");
        page.fill("#date", "2025-03-11");
        page.click("main button.main");
        page.click("text=Add postage");
        visit.look("postage");
        page.fill("#carriage", "5.40");
        page.fill("#date", "2025-03-11");
        page.selectOption("#place", goods.cash.toString());
        page.click("main button.main");
        page.click("text=Give money back");
        visit.look("refund");
        page.fill("#date", "2025-03-12");
        page.fill("[id='lines0.amount']", "40");
        page.check("[id='lines0.comesBack']");
        page.click("main button.main");
        visit.look("sale-refunded");
        page.click("text=Undo the sale");
        page.click("text=Yes, undo it");
        assertThat(page.textContent(".notice[role=status]")).contains("Remove those first");
        visit.open("/payments");
        visit.look("payments");
        visit.open("/payments/new");
        visit.look("deposit");
        visit.open("/payouts/new");
        visit.look("payout");
        visit.open("/payouts");
        visit.look("payouts");
        visit.open("/postage");
        visit.look("postages");
    }

    /** Two brushes a set, asked 10.00 singly and sold for 9.00; ten on the shelf make five. One brush of two sets is sent back. */
    @Test
    void makesABundleSellsItAndTakesAPartBack(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/supplies/shelf");
        page.click("text=Make a bundle");
        page.fill("#name", "Starter set");
        page.fill("#price", "9");
        page.selectOption("[id='parts0.supply']", goods.brushes.toString());
        page.fill("[id='parts0.quantity']", "2");
        page.click("text=See how the price is shared");
        assertThat(page.waitForSelector("#shares:visible").textContent()).contains("$10.00", "$4.00", "$9.00");
        visit.look("bundle");
        page.click("main button.main");
        assertThat(page.waitForSelector("#bundles:visible").textContent())
                .contains("Starter set", "2 Round brush", "56%");
        visit.look("shelf-with-bundle");
        page.click("#bundles a:has-text('Sell')");
        page.selectOption("#channel", goods.stall.toString());
        page.fill("#date", "2025-12-20");
        page.fill("[id='lines0.quantity']", "2");
        page.click("text=Recalculate fee and sums");
        assertThat(page.waitForSelector("#sums:visible").textContent()).contains("$18.00");
        visit.look("sale-form-bundle");
        page.click("main button.main");
        assertThat(page.waitForSelector("#bundles:visible").textContent()).contains("2 × Starter set, $18.00");
        visit.look("sale-of-bundle");
        page.click("text=Give money back");
        page.fill("#date", "2026-01-10");
        page.fill("[id='lines0.amount']", "4.50");
        page.check("[id='lines0.back-1']");
        page.fill("[id='lines0.quantity']", "5");
        page.click("main button.main");
        assertThat(page.waitForSelector("[id='lines0.quantity-error']:visible").textContent())
                .contains("No more than 4 is left");
        visit.look("refund-refused");
        page.fill("[id='lines0.quantity']", "1");
        page.selectOption("#place", goods.cash.toString());
        page.click("main button.main");
        assertThat(page.waitForSelector("#sent-back:visible").textContent())
                .contains("Round brush, 1 back on the shelf");
        visit.look("sale-part-sent-back");
    }
}
