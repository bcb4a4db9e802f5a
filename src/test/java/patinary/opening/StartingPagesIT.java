package patinary.opening;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** The way from an empty shop to a piece with a cost card, by hand in a real browser. */
@ShopTest
@ExtendWith(Browser.class)
class StartingPagesIT {

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void leadsFromTheFirstDayToTheCostCard(Browser.Visit visit) {
        places.save(new MoneyPlace(UUID.randomUUID(), "Cash box", MoneyPlace.Kind.CASH));
        visit.signIn();
        Page page = visit.open("/opening");
        page.fill("#pieces0\\.title", "Oak box");
        page.fill("#pieces0\\.cost", "12.00");
        page.click("button[value=add-piece]");
        assertThat(page.inputValue("#pieces0\\.title")).isEqualTo("Oak box");
        page.fill("#pieces1\\.title", "Tin tray");
        page.check("#pieces1\\.unknown");
        page.fill("#pieces1\\.cost", "5");
        page.fill("#money0\\.amount", "50");
        page.fill("#lastClosing", "20.00");
        visit.look("opening-typed");
        page.click("main .buttons button.main");
        assertThat(page.textContent(".notice[role=status]")).contains("saved");
        visit.look("opening-saved");

        visit.open("/pieces");
        visit.look("pieces");
        UUID box = jdbc.sql("select id from piece where title = 'Oak box'")
                .query(UUID.class)
                .single();
        visit.open("/pieces/" + box);
        visit.look("piece");
        visit.open("/pieces/" + box + "/edit");
        page.fill("#area", "30 x 40");
        page.click("main .buttons button.main");
        assertThat(page.textContent("#area-error")).contains("unit");
        visit.look("piece-edit-refused");
        page.fill("#area", "30 x 40 cm");
        page.fill("#newStyle", "Sea glass");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("1200 sq cm").contains("Sea glass");
        visit.open("/pieces/styles");
        visit.look("styles");
        visit.open("/pieces/" + box + "/split");
        visit.look("split");
        visit.open("/pieces/join");
        visit.look("join");
        visit.open("/pieces/" + box + "/let-go");
        visit.look("let-go");
        page.check("#reason");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("Take the letting go back");
        visit.look("piece-gone");
    }
}
