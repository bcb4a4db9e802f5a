package patinary.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** That the rules find what breaks them, also where most of a page is in order. */
@ShopTest
@ExtendWith(Browser.class)
class PageRulesIT {

    private static final String ROWS = "<p class='row'>In order <b>and bold</b></p>".repeat(40);

    @Test
    void findWhatCannotBeReadAmongMuchThatCan(Browser.Visit visit) {
        Page page = page(
                visit,
                "<style>.pale { color: #bbb } .pale, .row { background: #fff }</style>" + ROWS
                        + "<p class='row pale'>Too pale</p>" + ROWS + "<p class='row'><i class='pale'>Pale too</i></p>"
                        + "<label>Name <input class='pale' value='Pale as well'></label>");

        assertThat(PageRules.dim(page))
                .hasSize(3)
                .anyMatch(found -> found.contains("Too pale"))
                .anyMatch(found -> found.contains("Pale too"))
                .anyMatch(found -> found.contains("Pale as well"));
        assertThat(PageRules.broken(page)).containsAll(PageRules.dim(page));
        assertThat(PageRules.brokenButContrast(page)).isEmpty();
    }

    @Test
    void findAFieldWithoutALabel(Browser.Visit visit) {
        Page page = page(visit, ROWS + "<input name='lost'>");

        assertThat(PageRules.brokenButContrast(page)).singleElement().asString().startsWith("label: ");
    }

    @Test
    void findNothingWhereAllIsInOrder(Browser.Visit visit) {
        assertThat(PageRules.broken(page(visit, ROWS))).isEmpty();
    }

    private static Page page(Browser.Visit visit, String content) {
        visit.page()
                .setContent("<!doctype html><html lang='en'><title>A page</title><main><h1>A page</h1>" + content
                        + "</main></html>");
        return visit.page();
    }
}
