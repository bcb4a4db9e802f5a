package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
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

    @Autowired
    private BenchClock clock;

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
        String paint = paint();
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

    /** Quiet while only one of the two is tapped; the same from the lists of the phone, without the shop. */
    @Test
    void whatFailedOnTheSameSurfaceIsSaidOnceBothAreTapped(Browser.Visit visit) {
        jdbc.sql("update piece set material = 'Tin' where id = ?")
                .param(bench.crate)
                .update();
        program.getBean(BenchEntries.class)
                .record(
                        UUID.randomUUID(),
                        new BenchContent(
                                StockedBench.DAY,
                                "",
                                5,
                                "",
                                List.of(new BenchPiece(bench.crate, false)),
                                List.of(),
                                List.of(),
                                List.of(new Mishap(1, bench.crate, bench.paint, "", "Peeled", "Wiped only", null))));
        visit.signIn();
        Page page = visit.open("/bench/now");
        page.setViewportSize(390, 844);
        assertThat(page.isVisible("[data-failed-shown]")).isFalse();
        tap(page, paint() + "> .tap");
        tap(page, "label:has(#piece-" + bench.box + ")");
        assertThat(page.isVisible("[data-failed]")).isFalse();
        tap(page, "label:has(#piece-" + bench.crate + ")");
        assertThat(page.isVisible("[data-failed]")).isTrue();
        assertThat(page.textContent("[data-failed]")).contains("tin: failed 1 of 1");
        visit.open("/bench/mishaps");
        visit.look("mishaps");
    }

    /** What is half tapped is hers: away with her sign-out, back with her sign-in, and there without reception. */
    @Test
    void clockAndTapsOutliveTheTabWithoutReceptionAndAreHersAlone(Browser.Visit visit) {
        visit.signIn();
        Page page = ready(visit);
        tap(page, "button[value=clock-go]:visible");
        tap(page, "label:has(#piece-" + bench.box + ")");
        tap(page, "label:has(#piece-" + bench.crate + ")");
        tap(page, paint() + "> .tap");
        tap(page, paint() + "summary");
        tap(page, paint() + part(bench.crate) + ".tap");
        page.fill(paint() + part(bench.crate) + "[name$=weight]", "2");
        page.click("form.leave button");
        visit.open("/bench/now");
        page.waitForSelector("#piece-" + bench.box);
        assertThat(page.isChecked("#piece-" + bench.box)).isFalse();
        assertThat(page.isVisible("button[value=clock-pause]")).isFalse();

        visit.signIn();
        page = ready(visit);
        assertTapped(page);
        Instant start = clock.of(InventedShop.OWNER).timer().started();
        assertThat(start).isNotNull();
        visit.context().setOffline(true);
        page.close();
        Page again = visit.context().newPage();
        again.clock().setFixedTime(start.plusSeconds(25 * 60 + 2).toEpochMilli());
        again.navigate("/bench/now");
        again.waitForSelector(paint());
        assertTapped(again);
        assertThat(again.textContent("[data-clock-words]")).contains("25 min");
        tap(again, "button[value=clock-pause]:visible");
        again.waitForResponse(
                answer -> answer.url().endsWith("/bench/clock"),
                () -> visit.context().setOffline(false));
        BenchTimer kept = clock.of(InventedShop.OWNER).timer();
        assertThat(kept.isRunning()).isFalse();
        assertThat(kept.worked()).isEqualTo(25 * 60 + 2);
    }

    @Test
    void aRefusedEntryComesBackWithItsSharesAndCanBeTakenBackOnceItIsKept(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/bench/now");
        page.setViewportSize(390, 844);
        tap(page, "label:has(#piece-" + bench.box + ")");
        tap(page, "label:has(#piece-" + bench.crate + ")");
        tap(page, paint() + "> .tap");
        tap(page, paint() + "summary");
        page.fill(paint() + "[name$=quantity]", "a puddle");
        page.selectOption(paint() + "[name$=share]", "TYPED");
        page.fill(paint() + part(bench.box) + "[name$=weight]", "1");
        page.fill(paint() + part(bench.crate) + "[name$=weight]", "2");
        tap(page, ".now-save button");
        page.waitForFunction("() => window.outbox.all().then(all => all.length === 1 && all[0].state === 'heed')");
        tap(page, "button[value=clock-go]:visible");
        String key = (String) page.evaluate("() => window.outbox.all().then(all => all[0].key)");

        visit.open("/bench/now?mend=" + key);
        page.waitForSelector(paint() + ".outbox-problem:visible");
        visit.look("bench-now-mend");
        assertThat(page.inputValue(paint() + "[name$=quantity]")).isEqualTo("a puddle");
        assertThat(page.inputValue(paint() + part(bench.crate) + "[name$=weight]"))
                .isEqualTo("2");
        page.fill(paint() + "[name$=quantity]", "3 dabs");
        tap(page, ".now-save button");
        page.waitForSelector("[data-undo]:visible");
        assertThat(page.isVisible("button[value=clock-pause]")).isTrue();
        assertThat(bench.landed()).containsEntry("Small box", 20L).containsEntry("Long crate", 40L);
        page.click("[data-undo] button");
        page.waitForSelector(".notice");
        assertThat(jdbc.sql("select count(*) from bench_entry")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private void assertTapped(Page page) {
        assertThat(page.isChecked("#piece-" + bench.box)).isTrue();
        assertThat(page.isVisible("button[value=clock-pause]")).isTrue();
        assertThat(page.isChecked(paint() + part(bench.crate) + "[name$=only]")).isTrue();
        assertThat(page.inputValue(paint() + part(bench.crate) + "[name$=weight]"))
                .isEqualTo("2");
    }

    /** The page once it would also open without reception. */
    private Page ready(Browser.Visit visit) {
        Page page = visit.openToStay("/bench/now");
        page.waitForFunction("() => (window.outbox.lists()['bench-pieces'] || []).length > 0");
        return page;
    }

    private String paint() {
        return "[data-use][data-supply='" + bench.paint + "'] ";
    }

    private static String part(UUID piece) {
        return "[data-part='" + piece + "'] ";
    }

    /** What follows from a tap is worked out after the next frame. */
    private void tap(Page page, String what) {
        page.locator(what).first().click();
        page.evaluate("() => new Promise(done => requestAnimationFrame(() => setTimeout(() => setTimeout(done))))");
        taps++;
    }
}
