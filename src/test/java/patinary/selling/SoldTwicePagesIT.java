package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** Two buyers of one tray, and what is agreed with other people, as a person goes through the pages. */
@ShopTest
@ExtendWith(Browser.class)
class SoldTwicePagesIT {

    @Autowired
    private ApplicationContext program;

    private InventedGoods goods;

    @BeforeEach
    void stock() {
        goods = new InventedGoods(program);
    }

    @Test
    void settlesWhoGetsWhatWasSoldTwice(Browser.Visit visit) {
        visit.signIn();
        Page page =
                visit.open("/sales/new?piece=P0001&price=40&order=MK-1&buyer=Kit%20Invented&date=2025-03-10&channel="
                        + goods.market);
        page.click("main button.main");
        visit.open("/sales/new?piece=P0001&price=42&buyer=Lou%20Fictive&date=2025-03-11&channel=" + goods.stall);
        visit.look("sold-twice");
        page.check("#twiceKeep-1");
        page.fill("#twiceDate", "2025-03-11");
        page.click("text=Keep it so");
        assertThat(page.waitForSelector("main h1:visible").textContent()).contains("Sale of");
        visit.open("/sales?only=cancelled");
        visit.look("sales-cancelled");
        page.click("tbody a:has-text('Tin tray')");
        assertThat(page.textContent("main")).contains("Cancelled", "Never sent");
        visit.look("sale-cancelled");
    }

    @Test
    void agreesWithOtherPeople(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/arrangements/new/commission");
        page.fill("#title", "Rocking chair");
        page.fill("#owner", "The yellow house (invented)");
        page.fill("#price", "180");
        page.fill("#deposit", "60");
        page.selectOption("#place", goods.cash.toString());
        visit.look("commission-form");
        page.click("main button.main");
        visit.open("/arrangements/new/consigned");
        page.fill("#title", "Blue vase");
        page.fill("#owner", "Fay Fictive");
        page.fill("#percent", "60");
        page.click("main button.main");
        visit.open("/sales/new?piece=P0004&price=34&channel=" + goods.stall);
        page.click("main button.main");
        visit.open("/arrangements");
        visit.look("arrangements");
        assertThat(page.textContent("main")).contains("Rocking chair", "$20.40");
        visit.open("/arrangements/received/new");
        visit.look("received-form");
        visit.open("/arrangements/credit?buyer=The%20yellow%20house%20(invented)");
        visit.look("credit");
        visit.open("/offers/new?codes=P0002&pieces=P0002");
        page.fill("#price", "30");
        page.check("#channel-0");
        page.click("main button.main");
        visit.open("/arrangements/away");
        page.selectOption("#channel", goods.market.toString());
        page.click("text=This is somebody else");
        visit.look("away");
    }
}
