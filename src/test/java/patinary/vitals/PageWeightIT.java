package patinary.vitals;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.photos.DrawnPhotos;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/**
 * What the pages of a phone weigh on the first visit, and that the second one takes no file again. The bounds are those of the
 * page and its files; photos of what is in sight may come once the page is there, few and small, and are counted on their own.
 */
@ShopTest
@ExtendWith(Browser.class)
class PageWeightIT {

    private static final int MOST_BYTES = 100_000;
    private static final int MOST_SCRIPT = 50_000;
    private static final int MOST_REQUESTS = 8;
    private static final Set<String> FILES = Set.of("Stylesheet", "Script", "Image");

    /** What fits on a phone's screen, and a little more; the others come when they are scrolled to. */
    private static final int MOST_PHOTOS = 12;

    private static final int MOST_PHOTO = 15_500;
    private static final String EARLY = "() => performance.getEntriesByType('resource').filter(one =>"
            + " one.name.includes('/photos/') && one.startTime < performance.getEntriesByType('navigation')[0].loadEventStart)"
            + ".map(one => one.name)";

    @Autowired
    private ShopArchive archive;

    @Autowired
    private DrawnPhotos drawn;

    @Test
    void staysLight(Browser.Visit visit) throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        drawn.hang();
        Page signedIn = visit.signIn();
        String start = signedIn.url().replaceFirst("(//[^/]+).*", "$1");
        for (String path : PhonePages.ALL) {
            try (BrowserContext fresh = visit.context().browser().newContext(new NewContextOptions())) {
                fresh.addCookies(visit.context().cookies());
                Traffic first = open(fresh, start + path);
                assertThat(first.bytes()).as(path + ": " + first.asked()).isBetween(1000L, (long) MOST_BYTES);
                System.out.printf("%s: %d bytes, %d of them script%n", path, first.bytes(), script(first));
                assertThat(script(first)).as("script of " + path).isBetween(1000L, (long) MOST_SCRIPT);
                assertThat(first.requests()).as(path + ": " + first.asked()).isBetween(1, MOST_REQUESTS);
                boolean chosenFrom = path.equals("/stall") || path.equals("/bench/now");
                assertThat(first.photos())
                        .as("photos of " + path)
                        .hasSizeBetween(chosenFrom ? 1 : 0, MOST_PHOTOS)
                        .allMatch(one -> one.bytes() < MOST_PHOTO);
                Traffic second = open(fresh, start + path);
                assertThat(second.asked().values())
                        .as(path + " the second time")
                        .filteredOn(one -> FILES.contains(one.type()))
                        .isNotEmpty()
                        .allMatch(one -> one.bytes() == 0);
            }
        }
    }

    private static long script(Traffic traffic) {
        return traffic.asked().values().stream()
                .filter(one -> one.type().equals("Script"))
                .mapToLong(Traffic.Asked::bytes)
                .sum();
    }

    private static Traffic open(BrowserContext context, String url) {
        try (Page page = context.newPage()) {
            page.setViewportSize(390, 844);
            Traffic traffic = new Traffic(page);
            assertThat(page.navigate(url).status()).as(url).isEqualTo(200);
            assertThat(page.url()).isEqualTo(url);
            page.waitForLoadState(LoadState.NETWORKIDLE);
            assertThat((List<?>) page.evaluate(EARLY))
                    .as("photos before " + url + " was there")
                    .isEmpty();
            return traffic;
        }
    }
}
