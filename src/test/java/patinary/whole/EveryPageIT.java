package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.photos.DrawnPhotos;
import patinary.testing.Browser;
import patinary.testing.PageRules;
import patinary.testing.PageShape;
import patinary.testing.ShopTest;

/**
 * Every page that a link of the demo shop leads to, one of each kind: it opens, the accessibility rules find nothing on it, it
 * does not scroll sideways on a narrow phone, a phone or a laptop, nor with the text at twice its size, what is pressed is
 * large enough for a finger, keys show where they are, and the colours of a dark screen can be read. On the second database the pages
 * open and the rules but that of contrast find nothing; how they look was seen on the first.
 * Takes a picture of each at phone and laptop size where pictures are asked for.
 */
@ShopTest
@ExtendWith(Browser.class)
class EveryPageIT {

    private static final Path PICTURES = Path.of("target", "screenshots", "every");
    private static final int PHONE = 390;
    /** Where things stand and in what colours is the browser's and its settings' doing, not the database's: looked at once. */
    private static final boolean LOOKS =
            System.getProperty("patinary.test.database", "h2").equals("h2");

    private static final String SMALL = """
            () => [...document.querySelectorAll('main button, main input, main select, main summary, main .buttons a, nav a')]
              .filter(e => e.type !== 'hidden' && !e.classList.contains('sr') && e.checkVisibility()
                  && e.getClientRects().length)
              .map(e => {
                const tick = e.type === 'radio' || e.type === 'checkbox';
                const box = ((tick && (e.closest('.tick') || e.closest('label'))) || e).getBoundingClientRect();
                return [e.outerHTML.slice(0, 90), box.width, box.height];
              })
              .filter(([, w, h]) => w < 44 || h < 43.5)
              .map(String)""";

    /** What can be reached by keys, and does not show it; and what would be reached out of its order. */
    private static final String UNSEEN = """
            () => [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
              .filter(e => e.type !== 'hidden' && !e.disabled && e.checkVisibility())
              .filter(e => {
                e.focus({ focusVisible: true, preventScroll: true });
                let shown = document.activeElement !== e;
                for (let around = e; around && !shown; around = around.parentElement) {
                  const style = getComputedStyle(around);
                  shown = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
                }
                return !shown || e.tabIndex > 0;
              })
              .map(e => e.outerHTML.slice(0, 90))""";

    private static final String BEYOND = "document.documentElement.scrollWidth - document.documentElement.clientWidth";
    /** The size of plain text in pixels as a browser comes, and as somebody who needs it larger has set it. */
    private static final int PLAIN = 16;

    private static final int LARGE = 32;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private DrawnPhotos drawn;

    @Autowired
    private JdbcClient jdbc;

    private final List<String> faults = new ArrayList<>();

    private @Nullable CDPSession developer;

    @Test
    void isOpenAndFitForEverybody(Browser.Visit visit) throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        drawn.hang();
        jdbc.sql(
                        "insert into person (id, name, password_hash, role, created_at, version)"
                                + " select cast('00000000-0000-4000-8000-000000000002' as uuid), 'Kim', password_hash, 'HELPER', created_at, 0 from person")
                .update();
        PageRules.into(visit.context());
        visit.signIn();
        takeAllFromTheLine(visit);
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> ahead = new ArrayDeque<>(List.of("/", "/no-such-page", "/way-in", "/prove?back=/me", sheet()));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (!PageShape.isFile(path) && seen.add(PageShape.of(path))) {
                ahead.addAll(look(visit, path));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(seen).hasSizeGreaterThan(87);
    }

    /** Pages of one kind are looked at once, and the supply that a list names first has no sheet to be drawn. */
    private String sheet() {
        return "/supplies/"
                + jdbc.sql("select cast(min(cast(supply_id as varchar(36))) as varchar(36)) from supply_sheet")
                        .query(String.class)
                        .single()
                + "/sheet";
    }

    private List<String> look(Browser.Visit visit, String path) {
        Page page = visit.page();
        wide(page, PHONE);
        Response answer = page.navigate(page.url().replaceFirst("(//[^/]+).*", "$1") + path);
        if (answer.status() >= 400 && !path.equals("/no-such-page")) {
            faults.add(path + " answered " + answer.status());
            return List.of();
        }
        if (!LOOKS) {
            PageRules.brokenButContrast(page).forEach(found -> faults.add(path + ": " + found));
            return links(page);
        }
        PageBudget.over(page).forEach(over -> faults.add(path + " takes more than it may: " + over));
        PageRules.broken(page).forEach(found -> faults.add(path + ": " + found));
        assertFit(visit, path);
        return links(page);
    }

    private void assertFit(Browser.Visit visit, String path) {
        Page page = visit.page();
        Object small = page.evaluate(SMALL);
        if (!List.of().equals(small)) {
            faults.add(path + " has small targets: " + small);
        }
        Object unseen = page.evaluate(UNSEEN);
        if (!List.of().equals(unseen)) {
            faults.add(path + " does not show where the keys are: " + unseen);
        }
        inTheDark(page, path);
        picture(page, path, "phone");
        assertNothingSideways(page, path, PHONE);
        assertNothingSideways(page, path, 320);
        assertNothingSideways(page, path, 1280);
        picture(page, path, "laptop");
        textOf(visit, LARGE);
        assertNothingSideways(page, path + " in large text", 1280);
        assertNothingSideways(page, path + " in large text", PHONE);
        textOf(visit, PLAIN);
    }

    private void inTheDark(Page page, String path) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        PageRules.dim(page).forEach(found -> faults.add(path + " in the dark: " + found));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    }

    private void assertNothingSideways(Page page, String what, int width) {
        wide(page, width);
        Object beyond = page.evaluate(BEYOND);
        if (((Number) beyond).doubleValue() > 0) {
            faults.add(what + " scrolls sideways by " + beyond + " at " + width);
        }
    }

    /** To lay a page out anew takes long, and mostly it is as wide already as the look before left it. */
    private static void wide(Page page, int width) {
        if (page.viewportSize().width != width) {
            page.setViewportSize(width, 844);
        }
    }

    /** As the setting of the browser does it, so that what depends on the width in letters changes too. */
    private void textOf(Browser.Visit visit, int pixels) {
        JsonObject sizes = new JsonObject();
        sizes.addProperty("standard", pixels);
        JsonObject arguments = new JsonObject();
        arguments.add("fontSizes", sizes);
        developer(visit).send("Page.setFontSizes", arguments);
    }

    /** What comes by way of the page's own worker is counted as unpacked. */
    private void takeAllFromTheLine(Browser.Visit visit) {
        JsonObject bypass = new JsonObject();
        bypass.addProperty("bypass", true);
        developer(visit).send("Network.enable");
        developer(visit).send("Network.setBypassServiceWorker", bypass);
    }

    private CDPSession developer(Browser.Visit visit) {
        if (developer == null) {
            developer = visit.context().newCDPSession(visit.page());
        }
        return developer;
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        List<String> all =
                (List<String>) page.evalOnSelectorAll("a[href]", "all => all.map(a => a.getAttribute('href'))");
        return all.stream().filter(link -> link.startsWith("/")).toList();
    }

    private static void picture(Page page, String path, String sight) {
        Browser.picture(page, PICTURES.resolve(PageShape.of(path).replaceAll("\\W+", "_") + "-" + sight + ".png"));
    }
}
