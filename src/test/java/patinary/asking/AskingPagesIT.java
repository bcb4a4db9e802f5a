package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** From a fee rule to an asked price, a mark-down and a rent, as a person goes through it. The demo shop is invented. */
@ShopTest
@ExtendWith(Browser.class)
class AskingPagesIT {

    @Autowired
    private ShopArchive archive;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void namesAPriceMarksItDownAndPaysTheRent(Browser.Visit visit) throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        String code = jdbc.sql("select p.code from piece p join piece_state s on s.piece_id = p.id"
                        + " where s.state = 'READY' order by p.code fetch first 1 row only")
                .query(String.class)
                .single();
        visit.signIn();
        Page page = visit.open("/channels");
        page.click("tbody a:has-text('Own web shop')");
        page.fill("#price", "40");
        page.click("text=Work it out");
        assertThat(page.textContent("#remains")).contains("$40.00", "Remains");
        visit.look("channel-remains");
        page.click("text=A table of prices to print");
        visit.look("channel-prices");

        visit.open("/offers/new?pieces=" + code);
        page.fill("#note", "By the window");
        page.click("button:has-text('What to ask?')");
        assertThat(page.textContent("main")).contains("True floor", "Money in it");
        visit.look("asking");
        page.click("section.card:has-text('Own web shop') a.main");
        assertThat(page.inputValue("#codes")).isEqualTo(code);
        assertThat(page.inputValue("#note")).isEqualTo("By the window");
        assertThat(page.inputValue("#price")).isNotEmpty();
        page.click("main button.main");
        assertThat(page.textContent("main")).contains("By the window");

        visit.open("/mark-downs");
        visit.look("mark-downs");
        page.click("main button.main");
        assertThat(page.textContent("main")).contains("Tick at least one");
        page.check("[id='rows0.take']");
        page.click("main button.main");
        assertThat(page.textContent("main")).contains("Another price since today");
        visit.look("mark-downs-taken");
        page.click("button:has-text('Back to')");
        assertThat(page.textContent("body")).contains("The price before is asked again");
        page.click("text=Change the plan");
        visit.look("mark-down-plan");

        visit.open("/channel-fees");
        visit.look("channel-fees");
        page.check("[id='rows0.take']");
        page.fill("[id='rows0.amount']", "85");
        page.click("main button.main");
        assertThat(page.textContent("body")).contains("Recorded as expenses: 1");
        assertThat(jdbc.sql("select count(*) from expense where category = 'booth_rent' and amount_minor = 8500")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }
}
