package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** Bringing a file in as a person does it, on a phone and on a laptop. */
@ShopTest
@ExtendWith(Browser.class)
class BringingPagesIT {

    @Autowired
    private ApplicationContext program;

    @Test
    void fromTheFileToTheSalesAndBack(Browser.Visit visit) {
        BroughtShop shop = new BroughtShop(program);
        visit.signIn();
        Page page = visit.open("/sales/bring");
        visit.look("bringing-empty");
        page.click("main button.main");
        assertThat(page.textContent("#upload-error")).contains("Choose a file");
        String text = Shape.plain()
                .date("MM/dd/yyyy")
                .text()
                .replace("03/14", "03/04")
                .replace("P0001", "");
        page.setInputFiles("#upload", new FilePayload("may-sales.csv", "text/csv", text.getBytes()));
        page.click("main button.main");
        assertThat(page.textContent("main")).contains("may-sales.csv", "can be 3 Apr 2025 or 4 Mar 2025");
        page.click("button.main[value=save]");
        visit.look("bringing-mapping-errors");
        assertThat(page.textContent("#dates-error")).contains("Say how dates are written");
        page.selectOption("#dates", "MONTH_DAY_YEAR");
        page.selectOption("#channel", shop.market.toString());
        page.fill("#name", "Marketplace file");
        page.click("button.main[value=save]");
        assertThat(page.textContent("main")).contains("2 rows");
        page.fill("[id='rows1.codes']", "P77");
        page.click("button.main[value=save]");
        visit.look("bringing-rows-errors");
        assertThat(page.textContent("[id='rows1.codes-error']")).contains("No piece");
        page.fill("[id='rows1.codes']", "");
        page.selectOption("[id='rows1.pick']", "supply:" + shop.brushes + ":1");
        assertThat(page.inputValue("[id='rows0.pick']")).isEqualTo("piece:P0001");
        page.click("button.main[value=save]");
        visit.look("bringing-check");
        page.click("text=Bring in 3 sales");
        visit.look("bringing-import");
        assertThat(page.textContent("main")).contains("A-101", "Take 3 sales back");
        visit.open("/sales/bring");
        visit.look("bringing-files");
        page.click("tbody a:has-text('may-sales.csv')");
        page.click("text=Take 3 sales back");
        assertThat(page.textContent("main")).contains("Taken back");
        assertThat(shop.count("sale")).isZero();
    }
}
