package patinary.finishes;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** A finish from its form over the estimate to the bench of a phone, in a real browser. */
@ShopTest
@ExtendWith(Browser.class)
class FinishPagesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void isWrittenDownEstimatedAndFollowed(Browser.Visit visit) {
        StockedBench bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        visit.signIn();
        Page page = visit.open("/finishes");
        visit.look("finishes-empty");
        write(visit, page, bench);
        assertThat(page.textContent("main"))
                .contains("Wait 10\u00a0min to 15\u00a0min", "400 ml for each square metre", "RAG-4");
        visit.look("finish");
        measureAndPlan(visit, page, bench);
        page.click("a:has-text('What it will take')");
        // 2 (20 · 10 + 20 · 5 + 10 · 5) = 700 cm² take 28 ml of 200 ml for 20.00.
        assertThat(page.textContent("main")).contains("28", "$2.80", "Enough there");
        visit.look("finish-estimate");
        follow(visit, bench);
        visit.open("/finishes");
        page.click("a:has-text('Oil and wipe')");
        assertThat(page.textContent("main")).contains("too few to say");
        visit.look("finish-followed");
        page.click("a:has-text('To print')");
        visit.look("finish-print");
    }

    private static void write(Browser.Visit visit, Page page, StockedBench bench) {
        visit.open("/finishes/new");
        page.fill("#name", "Oil and wipe");
        page.fill("[id='steps0.what']", "Brush on thinly");
        page.fill("[id='steps0.minutes']", "20");
        page.fill("[id='steps0.waitFrom']", "10");
        page.fill("[id='steps0.waitTo']", "15");
        page.fill("[id='steps0.waitWords']", "Wipe back the excess");
        page.fill("[id='steps0.cautions']", "RAG-4");
        page.click("button[value=step]");
        page.fill("[id='steps1.what']", "Buff");
        page.selectOption("[id='needs0.supply']", bench.paint.toString());
        page.fill("[id='needs0.quantity']", "4 sq ft");
        page.selectOption("[id='needs0.per']", "SQUARE_METRE");
        page.click("main .buttons button.main");
        assertThat(page.textContent("[id='needs0.quantity-error']")).contains("measures area");
        visit.look("finish-refused");
        page.fill("[id='needs0.quantity']", "400 ml");
        page.click("main .buttons button.main");
    }

    private static void measureAndPlan(Browser.Visit visit, Page page, StockedBench bench) {
        visit.open("/pieces/" + bench.box + "/edit");
        page.click("summary:has-text('from a shape')");
        page.selectOption("#shape", "BOX_CLOSED");
        page.fill("#measures", "20 x 10 x 5 cm");
        page.selectOption("#finish", page.getAttribute("#finish option:last-child", "value"));
        visit.look("piece-measured");
        page.click("main .buttons button.main");
        assertThat(page.textContent("dl.facts")).contains("700 sq cm", "Oil and wipe");
    }

    /** With script: the planned finish comes with the piece; a tap fills in the supplies, another starts the wait. */
    private void follow(Browser.Visit visit, StockedBench bench) {
        Page page = visit.open("/bench/now");
        page.setViewportSize(390, 844);
        page.waitForFunction("() => document.querySelector('#finish').options.length > 1");
        page.click("label:has(#piece-" + bench.box + ")");
        page.waitForSelector("[data-steps] li");
        assertThat(page.textContent("[data-planned]")).contains("20 minutes");
        page.click("button[value=finish]");
        String paint = "[data-use][data-supply='" + bench.paint + "'] ";
        assertThat(page.inputValue(paint + "[name$='.quantity']")).isEqualTo("28 ml");
        assertThat(page.inputValue(paint + "[name$='.share']")).isEqualTo("AREA");
        page.waitForSelector("[data-caution='RAG-4']:visible");
        page.click("[data-steps] button:visible");
        page.waitForSelector("[data-waits] li:has-text('Wipe back the excess (10–15')");
        page.click("label:has(#ready-" + bench.box + ")");
        page.fill("#minutes", "35");
        visit.look("bench-now-finish");
        page.setViewportSize(390, 844);
        page.click(".now-save button");
        page.waitForSelector("[data-undo]:visible");
        assertThat(jdbc.sql("select finish_id from bench_entry")
                        .query(UUID.class)
                        .single())
                .isNotNull();
        assertThat(jdbc.sql("select typed from bench_use where estimated")
                        .query(String.class)
                        .single())
                .isEqualTo("28 ml");
    }
}
