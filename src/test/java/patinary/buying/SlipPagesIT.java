package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.slips.DrawnSlip;
import patinary.slips.SlipDesk;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** From a receipt's photo to a receipt that has the photo. Without the reading program: the page that says so. */
@ShopTest
@ExtendWith(Browser.class)
class SlipPagesIT {

    @Autowired
    private SlipDesk slips;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void readsAPhotoIntoAReceipt(Browser.Visit visit) throws Exception {
        Shelf.fill(jdbc);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        ImageIO.write(new DrawnSlip(6).photo(), "png", file);
        Page page = visit.signIn();
        visit.open("/receipts/read");
        visit.look("slip-new");
        page.setInputFiles("#file", new FilePayload("slip.png", "image/png", file.toByteArray()));
        page.click("main form button.main");
        page.waitForURL("**/receipts/read/*-*");
        visit.look("slip");
        assertThat(page.textContent("main").contains("is not installed")).isNotEqualTo(slips.isInstalled());
        page.click("main form button.main");
        page.waitForSelector("form[data-receipt]");
        assertThat(jdbc.sql("select count(*) from document").query(Long.class).single())
                .isZero();
        assertThat(page.inputValue("input[name=photo]")).isNotEmpty();
    }
}
