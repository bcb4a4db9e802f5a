package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.buying.LineKind;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** The pages of bench and supplies in a real browser, on a phone and on a laptop. */
@ShopTest
@ExtendWith(Browser.class)
class BenchPagesIT {

    @Autowired
    private ApplicationContext program;

    private StockedBench bench;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        bench.receipt(LineKind.SHELF, bench.paint, BigDecimal.valueOf(400), "40.00", StockedBench.DAY);
    }

    @Test
    void workIsWrittenDownWithAFewTaps(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/bench");
        visit.look("bench-empty");
        visit.open("/bench/new");
        visit.look("bench-new");
        page.check("#piece-" + bench.box);
        page.check("#ready-" + bench.crate);
        page.fill("#minutes", "45");
        page.fill("#done", "Sanded the old varnish, one coat");
        page.selectOption("[id='uses0.supply']", bench.paint.toString());
        page.fill("[id='uses0.quantity']", "10 dabs");
        page.click("button[value=use]");
        page.selectOption("[id='uses1.supply']", bench.oil.toString());
        page.fill("[id='uses1.quantity']", "12 x 8 in");
        page.click("button[value=mishap]");
        page.fill("[id='mishaps0.what']", "Bled through");
        page.click("main .buttons button.main");
        assertThat(page.textContent("[id='uses1.quantity-error']")).contains("measures area");
        visit.look("bench-refused");
        page.fill("[id='uses1.quantity']", "1/4 cup");
        page.click("main .buttons button.main");
        assertThat(page.textContent("h1")).startsWith("Work of");
        assertThat(page.textContent("main")).contains("Not yet costed", "Oily rags", "Bled through");
        visit.look("bench-entry");
        visit.open("/bench");
        visit.look("bench-list");
    }

    @Test
    void suppliesAreListedCountedAndTaken(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/supplies");
        visit.look("supplies");
        visit.open("/supplies/new");
        visit.look("supplies-new");
        visit.open("/supplies/" + bench.paint);
        visit.look("supply");
        page.click("a:has-text('Count it')");
        page.fill("#quantity", "1/4 jar");
        visit.look("supply-count");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("150", "more was used");
        visit.look("supply-counted");
        visit.open("/supplies/" + bench.paint + "/take");
        page.fill("#quantity", "1 jar");
        visit.look("supply-take");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("$20.00");
        visit.look("supply-taken");
        visit.open("/supplies/lines");
        visit.look("supply-lines");
    }
}
