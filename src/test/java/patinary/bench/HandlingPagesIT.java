package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.buying.LineKind;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Sheets, pots and what keeps, in a real browser: one walk through all of it. */
@ShopTest
@ExtendWith(Browser.class)
class HandlingPagesIT {

    @Autowired
    private ApplicationContext program;

    private StockedBench bench;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        bench.paintFor("20.00", StockedBench.DAY);
        bench.receipt(LineKind.SUPPLY, bench.oil, BigDecimal.valueOf(100), "10.00", StockedBench.DAY);
        bench.receipt(LineKind.SUPPLY, bench.paper, BigDecimal.valueOf(3600), "36.00", StockedBench.DAY);
    }

    @Test
    void aSheetIsCutAPotIsMixedAndTheRestIsUsedLater(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/supplies/" + bench.paper + "/edit");
        page.fill("#sheet", "30 x 60 cm");
        page.fill("[id='motifs0.name']", "fern");
        page.fill("[id='motifs0.quantity']", "10 x 15 cm");
        page.click("button[value=motif]");
        page.fill("[id='motifs1.name']", "too large");
        page.fill("[id='motifs1.quantity']", "70 x 15 cm");
        page.click("main .buttons button.main");
        assertThat(page.textContent("[id='motifs1.quantity-error']")).contains("larger than its sheet");
        page.fill("[id='motifs1.name']", "");
        page.fill("[id='motifs1.quantity']", "");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("30 x 60 cm", "fern");
        limit(page);
        mix(visit);
        UUID kept = useWhatWasKept(page);
        visit.open("/supplies/" + bench.paper + "/sheet");
        assertThat(page.textContent("main"))
                .contains("Sheets begun", "30 x 45 cm", "20 x 5 cm", "fern", "$1.50", "$2.00");
        assertThat(page.locator("svg.cut-sheet rect.taken").count()).isEqualTo(2);
        visit.look("sheet-left");
        visit.open("/supplies/" + kept);
        assertThat(page.textContent("main")).contains("15\u00a0ml", "Mixed at the bench");
        keep(visit);
    }

    private void limit(Page page) {
        page.navigate(page.url().replaceFirst("(//[^/]+).*", "$1") + "/supplies/" + bench.oil + "/edit");
        page.fill("#daysMixed", "7");
        page.fill("#most", "50");
        page.fill("#mostNote", "an invented label");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("50%", "an invented label");
    }

    /** 60 ml of paint, 30 of them into a cup with 20 ml of oil, which is too much; 15 ml kept. */
    private void mix(Browser.Visit visit) {
        Page page = visit.open("/bench/new");
        page.check("#piece-" + bench.box);
        page.check("#piece-" + bench.crate);
        page.click("button[value=cut]");
        page.selectOption("[id='handling.cuts0.what']", bench.paper + "|fern");
        page.click("button[value=cut]");
        page.selectOption("[id='handling.cuts1.what']", bench.paper.toString());
        page.fill("[id='handling.cuts1.quantity']", "10 x 20 cm");
        page.click("button[value=pot]");
        page.selectOption("[id='handling.pots0.inside0.supply']", bench.paint.toString());
        page.fill("[id='handling.pots0.inside0.quantity']", "60 ml");
        page.click("details:has([id='handling.pots0.rest']) > summary");
        page.fill("[id='handling.pots0.rest']", "1/4");
        page.check("[name='handling.pots[0].then'][value=KEPT]");
        page.click("button[value=pot]");
        page.selectOption("[id='handling.pots1.from']", "1");
        page.fill("[id='handling.pots1.poured']", "30 ml");
        page.selectOption("[id='handling.pots1.inside0.supply']", bench.oil.toString());
        page.fill("[id='handling.pots1.inside0.quantity']", "20 ml");
        visit.look("bench-pots");
        page.click("main > form > .buttons button.main, main .buttons button.main");
        assertThat(page.textContent("main"))
                .contains("Mixed in pots", "More than the label allows", "66.7%", "kept as");
        visit.look("bench-pots-kept");
    }

    private UUID useWhatWasKept(Page page) {
        page.click("a:has-text('mixed')");
        String kept = page.url().replaceFirst(".*/", "");
        page.click("a:has-text('Use it'), a[href*='/bench/new?supply']");
        page.fill("[id='uses0.quantity']", "15 ml");
        page.selectOption("[id='uses0.share']", "NONE");
        page.fill("[id='uses0.quantity']", "5 ml");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("5 ml");
        return UUID.fromString(kept);
    }

    private void keep(Browser.Visit visit) {
        Page page = visit.open("/supplies/" + bench.paint + "/lots");
        page.fill("[id='lots0.useBy']", "2025-04-01");
        visit.look("lots");
        page.click("main .buttons button.main");
        assertThat(page.textContent("main")).contains("past its day");
        visit.open("/supplies/shelf-life");
        visit.look("shelf-life");
        visit.open("/mixes?wanted=3+cups&additive=" + bench.oil + "&amount=1+cup&supply=" + bench.paint);
        assertThat(page.textContent("main")).contains("about 2 cups", "Within what the label allows");
        visit.look("mixes");
        page.click("a:has-text('Write this pot down')");
        assertThat(page.inputValue("[id='handling.pots0.made']")).isEqualTo("24 fl oz");
    }
}
