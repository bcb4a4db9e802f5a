package patinary.whole;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a page may weigh on its first visit, and how far it may shift while it comes: the project's own bounds, below the published
 * ones (CLS 0.1 of Core Web Vitals, web.dev). Counted packed, as sent, whether the browser had it already or not. Photos and the
 * guide's pictures come when the page is there, as they are scrolled to, and are not counted; {@code GuidePicturesIT} holds the pictures
 * to a bound of their own.
 */
final class PageBudget {

    private static final Map<String, Integer> MOST = Map.of(
            "bytes of the page", 30_000,
            "bytes of styles", 20_000,
            "bytes of script", 50_000,
            "bytes in all", 100_000,
            "requests", 8,
            "thousandths of shift", 20);

    private static final String TAKEN = """
            () => new Promise(done => {
              let shift = 0;
              new PerformanceObserver(list => list.getEntries().forEach(one => shift += one.hadRecentInput ? 0 : one.value))
                  .observe({ type: 'layout-shift', buffered: true });
              const files = performance.getEntriesByType('resource')
                  .filter(one => !one.name.includes('/photos/') && !/[/]guide[/][a-z0-9-]+[.]jpeg$/.test(one.name));
              const bytes = of => of.reduce((sum, one) => sum + one.encodedBodySize, 0);
              const ending = word => files.filter(one => new URL(one.name).pathname.endsWith(word));
              const page = performance.getEntriesByType('navigation')[0].encodedBodySize;
              setTimeout(() => done({
                'bytes of the page': page,
                'bytes of styles': bytes(ending('.css')),
                'bytes of script': bytes(ending('.js')),
                'bytes in all': page + bytes(files),
                'requests': 1 + files.length,
                'thousandths of shift': Math.round(shift * 1000),
              }), 20);
            })""";

    private PageBudget() {}

    /** What is over its bound on the page that was just opened, in words. */
    @SuppressWarnings("unchecked")
    static List<String> over(Page page) {
        Map<String, Object> taken = (Map<String, Object>) page.evaluate(TAKEN);
        List<String> over = new ArrayList<>();
        MOST.forEach((what, most) -> {
            double found = ((Number) taken.get(what)).doubleValue();
            if (found > most) {
                over.add("%s: %.0f, at most %d".formatted(what, found, most));
            }
        });
        return over;
    }
}
