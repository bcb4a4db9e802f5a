package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.shop.CurrentShop;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** A shelf counted phone in hand: two taps for each supply, and the next is there. */
@ShopTest
@ExtendWith(Browser.class)
class CountingPagesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private CurrentShop shop;

    private StockedBench bench;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", shop.today().minusWeeks(10));
        jdbc.sql("update supply set low_quantity = 160 where id = ?")
                .param(bench.paint)
                .update();
    }

    @Test
    void aShelfIsCountedTapByTapAndWhatIsLowIsBought(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/count");
        visit.look("count");
        page.setViewportSize(390, 844);
        page.click("[data-supply='" + bench.paint + "']");
        visit.look("count-one");
        page.setViewportSize(390, 844);
        page.click("label:has(#quarters-3)");
        page.waitForResponse(
                answer -> answer.url().endsWith("/count")
                        && answer.request().method().equals("POST"),
                () -> page.click(".now-save button"));
        page.waitForSelector("[data-supply='" + bench.paint + "'] .word:visible");
        assertThat(jdbc.sql("select quantity from supply_count")
                        .query(BigDecimal.class)
                        .single())
                .isEqualByComparingTo("150");

        visit.open("/supplies/" + bench.paint + "/eye");
        visit.look("eye");
        Page buying = visit.open("/buying-list");
        visit.look("buying-list");
        buying.click(".buying button");
        assertThat(buying.inputValue("[name='lines[0].supply']")).isEqualTo(bench.paint + "/jar");
        assertThat(jdbc.sql("select count(*) from receipt").query(Long.class).single())
                .isEqualTo(1);
    }
}
