package patinary.photos;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import patinary.testing.Browser;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Photos in a real browser: brought in many at once, matched by taps, arranged, taken away and brought back. */
@ShopTest
@ExtendWith(Browser.class)
class PhotoPagesIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private PhotoRows rows;

    @Test
    void areBroughtInMatchedAndArranged(Browser.Visit visit) {
        UUID box = new StockedBench(program).box;
        Page page = visit.signIn();
        visit.open("/photos/match");
        visit.look("photos-match-empty");
        page.setInputFiles(
                "#files", new FilePayload[] {picture("Small box", true), text(), picture("Lamp base", false)});
        page.click("main form.drop button[type=submit]");
        page.waitForSelector("[data-again]");
        assertThat(page.textContent("form.drop [role=status]")).contains("Kept: 2 of 3");
        assertThat(page.textContent("form.drop ul.error")).contains("notes.jpg: no picture that can be kept");
        page.click("[data-again]");
        page.waitForSelector("#photo-2");
        visit.look("photos-match");

        page.check("#photo-1");
        page.check("#photo-2");
        page.check("#stage-2");
        page.click("button[name=to][value='" + box + "']");
        page.waitForSelector(".notice");
        assertThat(page.textContent("main")).contains("No photo waits");
        assertThat(rows.of(new Subject(Subject.Kind.PIECE, box))).hasSize(2);

        visit.open("/pieces/" + box);
        String first = page.getAttribute(".gallery img", "src");
        page.click(".gallery > li:nth-child(2) summary");
        visit.look("photos-piece");
        page.click(".gallery > li:nth-child(2) button[value=first]");
        page.waitForURL("**/pieces/" + box + "#photos");
        assertThat(page.getAttribute(".gallery img", "src")).isNotEqualTo(first);
        page.click(".gallery > li:nth-child(1) summary");
        page.click(".gallery > li:nth-child(1) button[value=away]");
        page.waitForSelector(".notice");
        page.click("details.fold > summary:has-text('Taken away')");
        page.click("button[value=back]");
        page.waitForSelector(".gallery > li:nth-child(2)");

        visit.open("/photos/new?of=" + box);
        visit.look("photos-new");
        visit.open("/pieces");
        visit.look("photos-list");
    }

    private static FilePayload picture(String kind, boolean finished) {
        return new FilePayload(
                kind + ".jpg", "image/jpeg", Pixels.file(DrawnPiece.draw(kind, "Marsh green", finished), "jpeg"));
    }

    private static FilePayload text() {
        return new FilePayload("notes.jpg", "image/jpeg", "a list of things to buy".getBytes());
    }
}
