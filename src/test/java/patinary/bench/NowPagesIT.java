package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** The bench page in a real browser, with taps counted. */
@ShopTest
@ExtendWith(Browser.class)
class NowPagesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;
    private int taps;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        jdbc.sql("insert into supply_measure (supply_id, name, quantity) values (?, 'splash', 5)")
                .param(bench.oil)
                .update();
    }

    @Test
    void twoPiecesAndTwoSuppliesTakeTwelveTapsAndTheClockOutlivesThePage(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/bench/now");
        visit.look("bench-now");
        page.setViewportSize(390, 844);
        tap(page, "button[value=clock-go]:visible");
        tap(page, "label:has(#piece-" + bench.box + ")");
        tap(page, "label:has(#piece-" + bench.crate + ")");
        page.reload();
        assertThat(page.isChecked("#piece-" + bench.crate)).isTrue();
        assertThat(page.isVisible("button[value=clock-pause]")).isTrue();
        String paint = "[data-use][data-supply='" + bench.paint + "'] ";
        tap(page, paint + "> .tap");
        tap(page, paint + ".tap:has([value=dab])");
        tap(page, paint + "[data-step='1']");
        String oil = "[data-use][data-supply='" + bench.oil + "'] ";
        tap(page, oil + "> .tap");
        tap(page, oil + ".tap:has([value=splash])");
        assertThat(page.isVisible("[data-caution='RAG-1']")).isTrue();
        tap(page, "label:has(#ready-" + bench.box + ")");
        tap(page, "button[value=clock-stop]");
        tap(page, "[data-minutes='5']");
        visit.look("bench-now-tapped");
        page.setViewportSize(390, 844);
        tap(page, ".now-save button");
        page.waitForSelector("[data-undo]:visible");
        assertThat(taps).isEqualTo(12);
        assertThat(jdbc.sql("select typed from bench_use order by typed")
                        .query(String.class)
                        .list())
                .containsExactly("1 splash", "2 dabs");
        assertThat(jdbc.sql("select count(*) from bench_piece")
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    private void tap(Page page, String what) {
        page.locator(what).first().click();
        taps++;
    }
}
