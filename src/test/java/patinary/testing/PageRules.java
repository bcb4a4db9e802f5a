package patinary.testing;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * The accessibility rules of axe-core, asked of a page in a browser: its own script, as its library brings it, run in the page. What
 * the rules find in order is not described: of a long page that takes longer than most of the rules. The pages of the shop have no frames.
 */
public final class PageRules {

    /** By far the slowest of the rules. */
    private static final String CONTRAST = "color-contrast";

    private static final String SCRIPT = script();

    private static final String ASK = """
            async ask => {
              const found = await axe.run(document, { ...ask, resultTypes: ['violations'] });
              return found.violations.flatMap(rule => rule.nodes.map(node => rule.id + ': ' + node.html.slice(0, 120)));
            }""";

    /**
     * Contrast is asked of what carries this mark: of what carries text, the first two of those that stand alike in the page, with the
     * same elements and attributes all the way up. The rules go through the page once then, however much of it is asked.
     */
    private static final String MARK = """
            () => {
              const mark = 'data-contrast';
              document.querySelectorAll('[' + mark + ']').forEach(e => e.removeAttribute(mark));
              const alike = new Map();
              const named = a => a.name + (a.name === 'class' ? a.value : '');
              const kind = e => e ? e.localName + [...e.attributes].map(named) + '<' + kind(e.parentElement) : '';
              [...document.body.querySelectorAll('*')]
                .filter(e => e.matches('input, select, textarea') || [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
                .filter(e => e.checkVisibility())
                .filter(e => alike.set(kind(e), (alike.get(kind(e)) ?? 0) + 1).get(kind(e)) <= 2)
                .forEach(e => e.setAttribute(mark, ''));
              axe.configure({ rules: [{ id: 'color-contrast', selector: '[' + mark + ']' }] });
            }""";

    private PageRules() {}

    /** Brings the rules into every page that is opened from now on: a quarter of what it takes to bring them into each by itself. */
    public static void into(BrowserContext visit) {
        visit.addInitScript(SCRIPT);
    }

    /** What all the rules find on a page: which rule, and on what. */
    public static List<String> broken(Page page) {
        mark(page);
        return asked(page, "{}");
    }

    /** What all the rules but that of contrast find. */
    public static List<String> brokenButContrast(Page page) {
        present(page);
        return asked(page, "{ rules: { '" + CONTRAST + "': { enabled: false } } }");
    }

    /** What cannot be read for want of contrast. Of fifty rows that are drawn alike two are looked at, which finds the same in a third of the time. */
    public static List<String> dim(Page page) {
        mark(page);
        return asked(page, "{ runOnly: ['" + CONTRAST + "'] }");
    }

    @SuppressWarnings("unchecked")
    private static List<String> asked(Page page, String what) {
        return (List<String>) page.evaluate("(" + ASK + ")(" + what + ")");
    }

    private static void mark(Page page) {
        present(page);
        page.evaluate(MARK);
    }

    private static void present(Page page) {
        if (Boolean.FALSE.equals(page.evaluate("typeof axe !== 'undefined'"))) {
            page.evaluate(SCRIPT);
        }
    }

    private static String script() {
        try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
