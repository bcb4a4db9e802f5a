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
import java.util.stream.Stream;

/**
 * The accessibility rules of axe-core, asked of a page in a browser: its own script, as its library brings it, run in the page. What
 * the rules find in order is not described: of a long page that takes longer than most of the rules. The pages of the shop have no frames.
 */
public final class PageRules {

    /** By far the slowest of the rules. */
    private static final String CONTRAST = "color-contrast";

    private static final String SCRIPT = script();

    private static final String ASK = """
            async ([where, ask]) => (await axe.run(where ?? document, { ...ask, resultTypes: ['violations'] })).violations
              .flatMap(rule => rule.nodes.map(node => rule.id + ': ' + node.html.slice(0, 120)))""";

    /** Of what carries text, the first two of those that stand alike in the page: the same elements and attributes all the way up. */
    private static final String UNLIKE = """
            () => {
              const alike = new Map();
              const named = a => a.name + (a.name === 'class' ? a.value : '');
              const kind = e => e ? e.localName + [...e.attributes].map(named) + '<' + kind(e.parentElement) : '';
              return [...document.body.querySelectorAll('*')]
                .filter(e => e.matches('input, select, textarea') || [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
                .filter(e => e.checkVisibility())
                .filter(e => alike.set(kind(e), (alike.get(kind(e)) ?? 0) + 1).get(kind(e)) <= 2);
            }""";

    private PageRules() {}

    /** Brings the rules into every page that is opened from now on: a quarter of what it takes to bring them into each by itself. */
    public static void into(BrowserContext visit) {
        visit.addInitScript(SCRIPT);
    }

    /** What all the rules find on a page: which rule, and on what. */
    public static List<String> broken(Page page) {
        return Stream.of(brokenButContrast(page), dim(page))
                .flatMap(List::stream)
                .toList();
    }

    /** What all the rules but that of contrast find. */
    public static List<String> brokenButContrast(Page page) {
        return asked(page, "[null, { rules: { '" + CONTRAST + "': { enabled: false } } }]");
    }

    /** What cannot be read for want of contrast. Of fifty rows that are drawn alike two are looked at, which finds the same in a third of the time. */
    public static List<String> dim(Page page) {
        return asked(page, "[(" + UNLIKE + ")(), { runOnly: ['" + CONTRAST + "'] }]");
    }

    @SuppressWarnings("unchecked")
    private static List<String> asked(Page page, String where) {
        if (Boolean.FALSE.equals(page.evaluate("typeof axe !== 'undefined'"))) {
            page.evaluate(SCRIPT);
        }
        return (List<String>) page.evaluate("(" + ASK + ")(" + where + ")");
    }

    private static String script() {
        try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
