package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** The pages of buying as a person meets them. */
@ShopTest
@ExtendWith(Browser.class)
class ReceiptPagesIT {

    @Autowired
    private JdbcClient jdbc;

    @BeforeEach
    void fill() {
        Shelf.fill(jdbc);
    }

    @Test
    void takesAReceiptFromAPhone(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/receipts");
        visit.look("receipts-empty");
        page.click("main a.main");
        page.selectOption("#source", Shelf.SOURCE.toString());
        page.fill("[name='lines[0].title']", "Wicker basket");
        page.fill("[name='lines[0].price']", "12.50");
        page.click("button[value=add-line]");
        page.selectOption("[name='lines[1].kind']", "SUPPLY");
        page.selectOption("[name='lines[1].supply']", Shelf.PAINT + "/jar");
        page.fill("[name='lines[1].title']", "White");
        page.fill("[name='lines[1].price']", "8");
        assertThat(page.textContent("[data-running]")).contains("20.50");
        assertThat(page.isVisible("[name='lines[0].supply']")).isFalse();
        assertThat(page.isVisible("[name='lines[1].supply']")).isTrue();
        visit.look("receipt-form");
        page.fill("#tillTotal", "20.00");
        page.selectOption("#paidWith", Shelf.CASH.toString());
        page.press("#tillTotal", "Enter");
        assertThat(page.textContent("#difference")).contains("does not agree");
        visit.look("receipt-difference");
        page.fill("[name='lines[0].price']", "12.00");
        page.click("main button.main");
        page.waitForURL(address -> address.matches(".*/receipts/[0-9a-f-]{36}"));
        assertThat(page.textContent("main")).contains("P0001");
        visit.look("receipt");
        page.click("a[href$='/remove']");
        visit.look("receipt-remove");
        visit.open("/receipts");
        assertThat(page.textContent("main")).contains("Wicker basket").doesNotContain("No receipt here");
        visit.look("receipts");
        visit.open("/supplier-returns/new");
        visit.look("supplier-return-form");
        visit.open("/sources/" + Shelf.SOURCE);
        visit.look("source");
    }
}
