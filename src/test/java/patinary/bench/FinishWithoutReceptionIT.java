package patinary.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** A finish is followed where there is no reception: its steps and supplies come from the phone's own lists. */
@ShopTest
@ExtendWith(Browser.class)
class FinishWithoutReceptionIT {

    private static final UUID FINISH = UUID.fromString("00000000-0000-4000-8000-00000000f001");
    private static final String WAITING = "() => window.outbox.all().then(all => all.length)";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    private StockedBench bench;

    /** 6 ml of paint for each 100 cm² of surface, and 2 ml of oil for each piece. */
    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        jdbc.sql("insert into finish (id, name, note, removed, version) values (?, 'Pond and oil', '', false, 0)")
                .param(FINISH)
                .update();
        step(1, "First thin coat", "120, 240, 'Second coat'");
        step(2, "Rub in the oil", "null, null, ''");
        jdbc.sql("insert into finish_supply (finish_id, line, step, supply_id, typed, quantity, per_cm2)"
                        + " values (:finish, 1, 1, :paint, '6 ml', 6, 100), (:finish, 2, 2, :oil, '2 ml', 2, null)")
                .param("finish", FINISH)
                .param("paint", bench.paint)
                .param("oil", bench.oil)
                .update();
    }

    /** Box and crate have 400 cm²: 24 ml of paint by surface, and 4 ml of oil; 20 of 200 ml cost 2.00, so 24 cost 2.40. */
    @Test
    void anEntryWithItsFinishIsKeptAndArrivesWithTheFinishAndItsUses(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.openToStay("/bench/now");
        page.waitForFunction("() => (window.outbox.lists()['bench-finishes'] || []).length > 0");
        visit.context().setOffline(true);
        page.navigate("/bench/now");
        page.setViewportSize(390, 844);
        page.waitForFunction("() => document.querySelector('#finish').options.length > 1");
        page.click("label:has(#piece-" + bench.box + ")");
        page.click("label:has(#piece-" + bench.crate + ")");
        page.selectOption("#finish", FINISH.toString());
        assertThat(page.locator("[data-steps] li")).hasCount(2);
        assertThat(page.locator("[data-steps]")).containsText("First thin coat");
        page.click("button[value=finish]");
        assertThat(page.locator(use(bench.paint) + "[name$='.quantity']")).hasValue("24 ml");
        assertThat(page.locator(use(bench.oil) + "[name$='.quantity']")).hasValue("4 ml");
        page.click("[data-steps] button:visible");
        page.waitForSelector("[data-waits] li:has-text('Second coat')");
        page.fill("#minutes", "40");
        page.click(".now-save button");
        assertThat(page.locator(".outbox-said")).containsText("Saved on this phone");
        waiting(page, 1);
        assertThat(texts("select cast(id as varchar(36)) from bench_entry")).isEmpty();

        visit.context().setOffline(false);
        waiting(page, 0);
        assertThat(texts("select cast(finish_id as varchar(36)) from bench_entry"))
                .containsExactly(FINISH.toString());
        assertThat(texts("select typed from bench_use where estimated order by typed"))
                .containsExactly("24 ml", "4 ml");
        assertThat(jdbc.sql("select minutes from bench_entry")
                        .query(Integer.class)
                        .single())
                .isEqualTo(40);
        assertThat(bench.landed()).containsEntry("Small box", 60L).containsEntry("Long crate", 180L);
    }

    private static void waiting(Page page, int entries) {
        page.waitForCondition(() -> Integer.valueOf(entries).equals(page.evaluate(WAITING)));
    }

    private void step(int line, String what, String wait) {
        jdbc.sql("insert into finish_step (finish_id, line, what, minutes, wait_from, wait_to, wait_words, cautions)"
                        + " values (?, ?, ?, 10, " + wait + ", '')")
                .params(FINISH, line, what)
                .update();
    }

    private static String use(UUID supply) {
        return "[data-use][data-supply='" + supply + "'] ";
    }

    private List<String> texts(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }
}
