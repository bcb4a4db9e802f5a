package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import patinary.testing.Browser;
import patinary.testing.ShopTest;

/** The shell itself: the ways through the shop on a phone, help, and the page for what is not there. */
@ShopTest
@ExtendWith(Browser.class)
class LooksIT {

    @Test
    void opensAllWaysOnAPhone(Browser.Visit visit) {
        Page page = visit.signIn();
        page.setViewportSize(390, 844);
        page.click("details.more summary");
        assertThat(page.isVisible("details.more a[href='/year']")).isTrue();
        visit.look("more");
        page.setViewportSize(390, 844);
        page.keyboard().press("Escape");
        assertThat(page.isVisible("details.more a[href='/year']")).isFalse();
    }

    @Test
    void marksWhereWeAre(Browser.Visit visit) {
        visit.signIn();
        Page page = visit.open("/shop");
        page.setViewportSize(1280, 800);
        assertThat(page.getAttribute("nav.board a[href='/shop']", "aria-current"))
                .isEqualTo("page");
        assertThat(page.getAttribute("nav.board a[href='/']", "aria-current")).isNull();
    }

    @Test
    void helpsAndSaysWhatIsNotThere(Browser.Visit visit) {
        visit.signIn();
        visit.open("/help");
        visit.look("help");
        Page page = visit.open("/no/such/page");
        assertThat(page.textContent("h1")).isEqualTo("There is nothing here");
        visit.look("not-found");
    }

    @Test
    void givesEveryTargetRoomForAFinger(Browser.Visit visit) {
        Page page = visit.signIn();
        for (String path : new String[] {"/", "/shop", "/help"}) {
            visit.open(path);
            for (int width : new int[] {390, 1280}) {
                page.setViewportSize(width, 844);
                Object small = page.evaluate("""
                        () => [...document.querySelectorAll('a, button, summary, input, select, textarea')]
                          .filter(e => e.type !== 'hidden' && !e.closest('.skip') && e.getClientRects().length)
                          .map(e => {
                            const box = (e.type === 'radio' || e.type === 'checkbox' ? e.closest('.tick') : e).getBoundingClientRect();
                            return [e.outerHTML.slice(0, 80), box.width, box.height];
                          })
                          .filter(([, w, h]) => w < 44 || h < 44)
                          .map(String)
                        """);
                assertThat(small).as(path + " at " + width).isEqualTo(java.util.List.of());
            }
        }
    }

    @Test
    void printsOnlyThePaper(Browser.Visit visit) {
        Page page = visit.signIn();
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page.isVisible("nav.board")).isFalse();
        assertThat(page.isVisible("nav.bar")).isFalse();
        assertThat(page.isVisible("h1")).isTrue();
    }

    @Test
    void usesNothingFromOtherHostsAndLittleWeight(Browser.Visit visit) {
        Page page = visit.signIn();
        java.util.List<String> asked = new java.util.ArrayList<>();
        page.onRequest(request -> asked.add(request.url()));
        visit.open("/");
        String own = page.url().substring(0, page.url().indexOf('/', 8));
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith(own)).hasSizeLessThanOrEqualTo(8);
    }
}
