package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ScreenshotType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.photos.DrawnPhotos;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/**
 * The pictures of the guide are pages of the invented shop. Beside each stand the words of the page that are the program's own, as
 * they were when it was taken; where a page says something else today, its picture is stale. {@code -Dpatinary.pictures.renew=true}
 * takes all of them anew.
 */
@ShopTest
@ExtendWith(Browser.class)
class GuidePicturesIT {

    private static final Path PICTURES = Path.of("docs", "guide", "pictures");
    private static final boolean RENEW = Boolean.getBoolean("patinary.pictures.renew");
    private static final int QUALITY = 60;
    /** Points of the picture for one of the page: the guide shows the sheet of a laptop at two thirds of its width, a phone as it is. */
    private static final double LAPTOP = 1;

    private static final double PHONE = 1.5;
    /** A page of the guide has one or two of them. */
    private static final int HEAVIEST = 100_000;

    private static final int SIGHT = 1000;
    private static final int MARGIN = 8;
    /** Names of fields, buttons and columns, not what the shop has in them, nor what a helper's script hides. */
    private static final String WORDS = """
            () => [...new Set([...document.querySelectorAll('main h1, main legend, main label, main button, main summary, main thead th, main dt')]
              .filter(e => e.checkVisibility() && !e.closest('tbody, li, .history'))
              .map(e => e.textContent.replace(/\\s+/g, ' ').trim())
              .filter(words => words && !/\\d/.test(words)))].sort().join('\\n')""";

    /** Where a picture is taken, and how large the sight is. */
    private enum Taken {
        HOME("/", true),
        BUY("/buy", true),
        BENCH("/bench/new", true),
        PIECES("/pieces", false),
        SUPPLIES("/supplies", false),
        FINISHES("/finishes", true),
        STALL("/stall", true),
        OFFERS("/offers", false),
        SALES("/sales", false),
        MOVES("/moves/days", false),
        MONEY("/moves/money", false),
        YEAR("/year/2025", false),
        BACKUPS("/shop/backups", false),
        CHANGES("/history", false);

        private final String path;
        private final boolean phone;

        Taken(String path, boolean phone) {
            this.path = path;
            this.phone = phone;
        }

        String file() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    @Autowired
    private ShopArchive archive;

    @Autowired
    private DrawnPhotos drawn;

    @Test
    void areOfPagesThatLookSoToday(Browser.Visit visit) throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        drawn.hang();
        visit.signIn();
        Map<String, String> then = new TreeMap<>();
        Map<String, String> now = new TreeMap<>();
        try (BrowserContext phone = stay(visit, PHONE);
                BrowserContext laptop = stay(visit, LAPTOP)) {
            Page pocket = phone.newPage();
            Page desk = laptop.newPage();
            for (Taken taken : Taken.values()) {
                Page page = taken.phone ? pocket : desk;
                page.setViewportSize(taken.phone ? 390 : 1280, taken.phone ? 720 : SIGHT);
                page.navigate(visit.page().url().replaceFirst("(//[^/]+).*", "$1") + taken.path);
                now.put(taken.file(), (String) page.evaluate(WORDS));
                if (RENEW) {
                    take(page, taken, now.get(taken.file()));
                }
                then.put(taken.file(), Files.readString(PICTURES.resolve(taken.file() + ".txt")));
            }
        }
        assertThat(now).as("pages as the guide's pictures show them").isEqualTo(then);
        assertThat(kept())
                .hasSize(Taken.values().length)
                .allSatisfy(file -> assertThat(Files.size(file)).isLessThanOrEqualTo(HEAVIEST));
    }

    /** The same stay, signed in. */
    private static BrowserContext stay(Browser.Visit visit, double points) {
        BrowserContext stay = visit.context()
                .browser()
                .newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                        .setDeviceScaleFactor(points)
                        .setStorageState(visit.context().storageState()));
        stay.setDefaultTimeout(60_000);
        return stay;
    }

    private static void take(Page page, Taken taken, String words) throws IOException {
        Files.createDirectories(PICTURES);
        Page.ScreenshotOptions options = new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(taken.file() + ".jpeg"))
                .setType(ScreenshotType.JPEG)
                .setQuality(QUALITY);
        if (!taken.phone) {
            BoundingBox sheet = page.locator("main").boundingBox();
            double height = Math.min(sheet.height + 2 * MARGIN, SIGHT - sheet.y + MARGIN);
            options.setClip(sheet.x - MARGIN, sheet.y - MARGIN, sheet.width + 2 * MARGIN, height);
        }
        page.screenshot(options);
        Files.writeString(PICTURES.resolve(taken.file() + ".txt"), words);
    }

    private static List<Path> kept() throws IOException {
        try (var files = Files.list(PICTURES)) {
            return files.filter(file -> file.toString().endsWith(".jpeg")).toList();
        }
    }
}
